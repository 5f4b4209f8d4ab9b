import type { Shelf } from '../../../components/lesson/store.ts'

/** A shelf that holds so many characters and then refuses, as a full disk does. */
export function shelfOf(room = Number.POSITIVE_INFINITY, held: Record<string, string> = {}) {
  const texts = new Map(Object.entries(held))
  const shelf: Shelf = {
    getItem: (key) => texts.get(key) ?? null,
    removeItem: (key) => void texts.delete(key),
    setItem(key, text) {
      const others = [...texts].reduce((sum, [name, value]) => sum + (name === key ? 0 : value.length), 0)
      if (others + text.length > room) throw new DOMException('full', 'QuotaExceededError')
      texts.set(key, text)
    },
  }
  return { shelf, held: () => Object.fromEntries(texts) }
}
