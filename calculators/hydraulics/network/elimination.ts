/**
 * The order in which unknowns are eliminated, and all index arithmetic of the factorisation L·D·Lᵀ worked out once: a
 * factorisation then only walks through lists.
 */
export interface Elimination {
  /** Unknown at each place of the order. */
  readonly order: Int32Array
  /** Entries of column k of L are start[k] to start[k + 1]. */
  readonly start: Int32Array
  /** Place in the order of the row of each entry, rising within a column. */
  readonly row: Int32Array
  /**
   * What each product of two entries of one column is taken from, in the order in which they are met: a number below
   * the count of unknowns is a diagonal, else it is that count plus the place of an entry.
   */
  readonly target: Int32Array
}

/** Takes the unknown with the fewest neighbours each time; the first in the list among equals. */
function minimumDegree(neighbours: readonly Set<number>[]): { order: number[]; columns: number[][] } {
  const byDegree: number[][] = []
  const file = (unknown: number) => {
    const degree = neighbours[unknown]?.size ?? 0
    ;(byDegree[degree] ??= []).push(unknown)
  }
  // Filed backwards, since the last filed is the first taken.
  for (let unknown = neighbours.length - 1; unknown >= 0; unknown--) file(unknown)
  const taken = new Uint8Array(neighbours.length)
  const order: number[] = []
  const columns: number[][] = []
  let degree = 0
  while (order.length < neighbours.length) {
    const unknown = byDegree[degree]?.pop()
    if (unknown === undefined) {
      degree++
      continue
    }
    const around = neighbours[unknown]
    // An unknown whose degree has changed is filed again; what it left behind is passed over.
    if (!around || taken[unknown] || around.size !== degree) continue
    taken[unknown] = 1
    order.push(unknown)
    columns.push([...around])
    for (const one of around) {
      const set = neighbours[one]
      if (!set) continue
      set.delete(unknown)
      for (const other of around) if (other !== one) set.add(other)
      file(one)
      degree = Math.min(degree, set.size)
    }
  }
  return { order, columns }
}

/**
 * Prepares the elimination of a symmetric matrix.
 * @param count number of unknowns [-]
 * @param pairs unknowns that share a link [-]; the same pair may come more than once
 * @returns order, pattern and targets
 * @source common practice (minimum degree, right-looking factorisation)
 */
export function prepareElimination(
  count: number,
  pairs: readonly (readonly [number, number])[],
): Elimination {
  const neighbours = Array.from({ length: count }, () => new Set<number>())
  for (const [one, other] of pairs) {
    neighbours[one]?.add(other)
    neighbours[other]?.add(one)
  }
  const { order, columns } = minimumDegree(neighbours)
  const place = new Int32Array(count)
  for (const [k, unknown] of order.entries()) place[unknown] = k
  const rows = columns.map((column) => column.map((unknown) => place[unknown] ?? 0).sort((a, b) => a - b))
  const start = new Int32Array(count + 1)
  const entryAt = rows.map((column, k) => {
    const first = start[k] ?? 0
    start[k + 1] = first + column.length
    return new Map(column.map((row, i) => [row, first + i]))
  })
  const target: number[] = []
  for (const column of rows)
    for (const [i, one] of column.entries())
      for (const other of column.slice(i))
        target.push(one === other ? one : count + (entryAt[one]?.get(other) ?? 0))
  return {
    order: Int32Array.from(order),
    start,
    row: Int32Array.from(rows.flat()),
    target: Int32Array.from(target),
  }
}
