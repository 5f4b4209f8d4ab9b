// How hard a text is to read, by the two formulas that the trade's manuals are judged by. The coefficients stand in
// Kincaid, Fishburne, Rogers and Chissom, Derivation of New Readability Formulas for Navy Enlisted Personnel, 1975
// (grade level) and Flesch, A New Readability Yardstick, 1948 (ease); both are as public codes have them.

export interface ReadingEase {
  readonly words: number
  readonly sentences: number
  /** School years that a reader needs: 0.39 words a sentence + 11.8 syllables a word − 15.59. */
  readonly grade: number
  /** About 100 for the easiest: 206.835 − 1.015 words a sentence − 84.6 syllables a word. */
  readonly ease: number
}

const WORD = /\p{L}[\p{L}\p{N}'’]*/gu

/** Where a group of vowels is written and not spoken: pipe, pumped, gauges, safety; but table, heated, glasses. */
const SILENT = [
  /(?<![^aeiouy][lr]|[aeiouy])e$/,
  /(?<![sxzcg]|ch|sh|[^aeiouy][lr]|[aeiouy])es$/,
  /(?<![tdaeiouy]|[^aeiouylr]l)ed$/,
  /[aeiouy][^aeiouy]e(?=(?:ly|ty|ful|less|ness|ment))/,
]

/** Where one group is two syllables: dial, radius, manual, idea, video, being, layer, fluid, quiet. */
const PARTED = [
  /(?<![tcsg])i[aou]|(?<=[tg])ium/,
  /(?<![qg])u[aou]/,
  /[aeiouy].*ea$|(?<!p)eo|creat[eio]|react/,
  /[aeiouy]ing/,
  /[aou]y[aeiou]/,
  /(?<![qg])uid|quiet|scien|iety/,
]

/**
 * Syllables of an English word by its spelling. Some words in a hundred come out one too many or too few, to both
 * sides, which is enough for the mean of a page.
 */
export function syllablesOf(word: string): number {
  const plain = word.toLowerCase().replace(/['’]s?/g, '')
  const groups = plain.match(/[aeiouy]+/g)?.length ?? 0
  const count = (patterns: readonly RegExp[]) => patterns.filter((pattern) => pattern.test(plain)).length
  return Math.max(1, groups - count(SILENT) + count(PARTED))
}

/**
 * Measures a text of one or several paragraphs.
 * @param text plain words; a full stop, a question or exclamation mark or the end of a line ends a sentence
 * @returns figures of the whole; not a number where there is no word
 */
export function readingEase(text: string): ReadingEase {
  const sentences = text
    .split(/[.?!]+(?=\s|$)|\n+/)
    .map((sentence) => [...sentence.matchAll(WORD)].map(([word]) => word))
    .filter((found) => found.length > 0)
  const words = sentences.flat()
  const perSentence = words.length / sentences.length
  const perWord = words.reduce((sum, word) => sum + syllablesOf(word), 0) / words.length
  return {
    words: words.length,
    sentences: sentences.length,
    grade: 0.39 * perSentence + 11.8 * perWord - 15.59,
    ease: 206.835 - 1.015 * perSentence - 84.6 * perWord,
  }
}
