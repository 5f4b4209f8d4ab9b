import { units } from '../../../calculators/quantity/units.ts'

/** Units that are also words or letters of ordinary prose: '2 in parallel', '3 a day'. */
const ALSO_WORDS = new Set([
  'in',
  'd',
  't',
  'g',
  'C',
  'F',
  '"',
  "'",
  '′',
  'inch',
  'foot',
  'pound',
  'day',
  '',
  '1',
])

const spellings = Object.values(units)
  .flatMap((unit) => unit.alsoTyped.concat(unit.symbol, unit.id))
  .concat('degrees', '°')
  .filter((spelling) => !ALSO_WORDS.has(spelling))
  .sort((one, other) => other.length - one.length)
  .map((spelling) => spelling.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&'))

/** A number with a unit in a text. */
export const FIGURE = new RegExp(`\\d[\\d.,]*[\\s\\u00a0]?(?:${spellings.join('|')})(?![\\p{L}\\p{N}])`, 'u')
