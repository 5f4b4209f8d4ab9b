import { understoodUnits } from './kinds.ts'
import type { KindId } from './types.ts'
import { units } from './units.ts'

/**
 * A unit's spelling without what people write differently: raised and lowered digits, kinds of quotation mark,
 * signs of multiplication. A space counts as such a sign: 'N m' is 'N·m', and 'm m' is not 'mm'.
 */
function key(spelling: string): string {
  return spelling
    .replace(/º/g, '°')
    .normalize('NFKC')
    .replace(/[µμ]/g, 'u')
    .replace(/′′|''|[“”]/g, '"')
    .replace(/[′’]/g, "'")
    .replace(/\u2212/g, '-')
    .replace(/\^(?=\d)/g, '')
    .replace(/[ ·⋅*×.]+/g, '.')
    .replace(/\.?\/\.?/g, '/')
    .replace(/^\.|\.$/g, '')
}

function spellingsOf(id: string): string[] {
  const unit = units[id]
  // '1' is how the table names 'no unit'; a person who types a second number does not mean it.
  return unit && id !== '1' ? [...new Set([unit.id, unit.symbol, ...unit.alsoTyped].map(key))] : []
}

interface Spelling {
  readonly id: string
  readonly spelling: string
}

const exact = new Map<string, string>()
const anyCase = new Map<string, Spelling[]>()
for (const id of Object.keys(units)) {
  for (const spelling of spellingsOf(id)) {
    const other = exact.get(spelling)
    if (other !== undefined) throw new Error(`«${spelling}» is written for both ${other} and ${id}`)
    exact.set(spelling, id)
    const folded = spelling.toLowerCase()
    anyCase.set(folded, [...(anyCase.get(folded) ?? []), { id, spelling }])
  }
}

/**
 * Whether only the case of a leading m sets the two apart, in a text that is neither all small nor all capital:
 * 'mPa' is a well-formed millipascal and must not become a megapascal.
 */
function otherPrefix(typed: string, spelling: string): boolean {
  const uniform = typed === typed.toLowerCase() || typed === typed.toUpperCase()
  return !uniform && /^[mM]/.test(typed) && spelling[0] !== typed[0]
}

/**
 * Id of the unit that is spelled so, or undefined. Looks among the units of the kind first, then among all; the
 * case of letters counts only where it must.
 * @param spelling what was typed behind a number [-]
 * @param kind kind of quantity of the field [-]
 */
export function findUnit(spelling: string, kind: KindId): string | undefined {
  const typed = key(spelling)
  const own = understoodUnits(kind)
  const match = exact.get(typed)
  if (match !== undefined && own.includes(match)) return match
  const loose = (anyCase.get(typed.toLowerCase()) ?? []).filter((near) => !otherPrefix(typed, near.spelling))
  const looseOwn = new Set(loose.map((near) => near.id).filter((id) => own.includes(id)))
  if (looseOwn.size === 1) return [...looseOwn][0]
  return match ?? (loose.length === 1 ? loose[0]?.id : undefined)
}
