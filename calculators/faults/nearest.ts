/** How many ids are offered for one that is not known. */
const OFFERED = 3

/** Letters to be changed, left out or put in, to make one text of another. */
function lettersApart(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, place) => place)
  for (let i = 1; i <= one.length; i++) {
    const next = [i]
    for (let j = 1; j <= other.length; j++)
      next.push(
        Math.min(
          (row[j] ?? 0) + 1,
          (next[j - 1] ?? 0) + 1,
          (row[j - 1] ?? 0) + (one[i - 1] === other[j - 1] ? 0 : 1),
        ),
      )
    row = next
  }
  return row[other.length] ?? 0
}

/** Words that two ids share count more than letters: 'plugged-strainer' means 'suction-strainer-plugged'. */
function distance(one: string, other: string): number {
  const words = new Set(one.split('-'))
  const shared = other.split('-').filter((word) => words.has(word)).length
  return lettersApart(one, other) - 6 * shared
}

/**
 * Ids that are nearest to one that is not known.
 * @param id as it was given
 * @param known all that would do
 * @returns up to three, the nearest first
 */
export function nearest(id: string, known: readonly string[]): string[] {
  const given = id.slice(0, 60)
  return known.toSorted((one, other) => distance(given, one) - distance(given, other)).slice(0, OFFERED)
}
