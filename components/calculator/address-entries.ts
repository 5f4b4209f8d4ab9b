// What the pages whose address keeps their state have in common: reading the entries of a query string one by one,
// and quoting in plain text what somebody else may have written there.

const LONGEST_QUOTE = 40
const MOST_PROBLEMS = 5

/** Keys that other parts of the site put into an address. */
export const siteKeys = new Set(['q', 'highlight', 'pagefind-highlight'])

// Line ends, other control characters, and marks that turn the direction of reading and so could disguise a text.
const unprintable = /[\p{Cc}\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu

export const clean = (text: string): string => text.replace(unprintable, ' ')

export function quote(text: string): string {
  const shown = clean(text)
  return `«${shown.length > LONGEST_QUOTE ? `${shown.slice(0, LONGEST_QUOTE)}…` : shown}»`
}

export const saidTwice = (key: string): string =>
  `${quote(key)} stands in the address more than once; the first was taken.`

/** The first few problems, and how many more there are. */
export function fewProblems(problems: readonly string[]): readonly string[] {
  const more = problems.length - MOST_PROBLEMS
  return more > 0
    ? [...problems.slice(0, MOST_PROBLEMS), `And ${more} more that could not be used.`]
    : problems
}

/**
 * The state with every entry of a query string in it that can be used.
 * @param longest characters that a query string may have
 * @param readEntry the state with one entry in it, or a sentence that says why not
 */
export function readEntries<State>(
  query: string,
  longest: number,
  start: State,
  readEntry: (before: State, key: string, value: string) => State | string,
): { readonly state: State; readonly problems: readonly string[] } {
  if (query.length > longest) {
    const problem = `The address has ${query.length} characters behind its question mark; accepted: at most ${longest}. Nothing of it was used.`
    return { state: start, problems: [problem] }
  }
  const problems: string[] = []
  const seen = new Set<string>()
  let state = start
  for (const [key, value] of new URLSearchParams(query)) {
    if (siteKeys.has(key)) continue
    if (seen.has(key)) {
      problems.push(saidTwice(key))
      continue
    }
    seen.add(key)
    const outcome = readEntry(state, key, value)
    if (typeof outcome === 'string') problems.push(outcome)
    else state = outcome
  }
  return { state, problems: fewProblems(problems) }
}

/** The entries of a query string that belong to other parts of the site; none of one that is too long to be ours. */
export function siteEntries(query: string, longest: number): URLSearchParams {
  const entries = [...new URLSearchParams(query.length > longest ? '' : query)]
  return new URLSearchParams(entries.filter(([key]) => siteKeys.has(key)))
}
