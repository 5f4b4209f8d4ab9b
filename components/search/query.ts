/** Longest query that is read; what stands behind it is left out. */
export const MAXIMUM_QUERY_LENGTH = 200

/** Most words of a query that are searched for. */
const MAXIMUM_WORDS = 12

/** Words that a question is built with and that no page is about. */
const fillers = new Set(
  (
    'a about an and are as at be been but by can cant could did do does doesnt dont for from get gets got had has have how ' +
    'i if in into is isnt it its many me mean means much must my need needed needs of or our please should so some than that the their them then there these ' +
    'this those to was we were what when where which while who why will with wont work works would you your'
  ).split(' '),
)

/** Endings that a word takes without becoming another word, the longer ones first. */
const endings = /(?:ings?|ies|ied|ers?|ed|es|[ey]|(?<!s)s)$/

/** Shortest rest that an ending may leave. */
const SHORTEST_STEM = 3

/** Lower case, without accents, and with the marks that people type for each other made the same. */
export function plain(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[’']s?\b/g, '')
    .toLowerCase()
}

/** The words of a text as people type them; 'spin-on' stays one word. */
export function wordsOf(text: string): string[] {
  return plain(text)
    .split(/[^\p{L}\p{N}%.-]+/u)
    .map((word) => word.replace(/^[.%-]+|[.-]+$/g, ''))
    .filter((word) => word !== '')
}

/** The words of a query that are searched for: no fillers, unless there is nothing else; no word twice. */
export function searchWords(query: string): string[] {
  const all = [...new Set(wordsOf(query.slice(0, MAXIMUM_QUERY_LENGTH)))]
  const meaningful = all.filter((word) => !fillers.has(word))
  return (meaningful.length > 0 ? meaningful : all).slice(0, MAXIMUM_WORDS)
}

/** What is left of a word without its ending, so that 'priming' and 'primes' are the same. */
export function stem(word: string): string {
  const rest = word.replace(endings, '')
  return rest.length >= SHORTEST_STEM ? rest : word
}

/** The stems of a text's words, parts of hyphened words and the whole without its hyphens among them. */
export function stemsOf(text: string): Set<string> {
  return new Set(wordsOf(text).flatMap(formsOf).map(stem))
}

/** A word and, when it is hyphened, its parts and the whole written as one. */
export function formsOf(word: string): string[] {
  const parts = word.split('-').filter((part) => part !== '')
  return parts.length > 1 ? [...parts, parts.join('')] : parts
}
