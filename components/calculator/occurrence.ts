const seen = new WeakMap<Request, Map<string, number>>()

/**
 * A name for a calculator that no other on the page has: its id, and from the second of the same kind on a number.
 * It starts the ids in its HTML and its keys in the page's address.
 */
export function nameOnPage(page: Request, id: string): string {
  const counts = seen.get(page) ?? new Map<string, number>()
  seen.set(page, counts)
  const count = (counts.get(id) ?? 0) + 1
  counts.set(id, count)
  return count === 1 ? id : `${id}-${count}`
}
