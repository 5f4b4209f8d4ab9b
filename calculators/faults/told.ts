/** What was given in words: texts and numbers in guillemets, of all else what it is. */
export function told(value: unknown): string {
  if (typeof value === 'string' || typeof value === 'number') return `«${String(value).slice(0, 60)}»`
  if (value === null) return 'null'
  return Array.isArray(value) ? 'an array' : typeof value === 'object' ? 'an object' : String(value)
}
