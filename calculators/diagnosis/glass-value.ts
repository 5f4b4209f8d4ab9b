import type { GlassLook, GlassView } from '../circuit/types.ts'

/** Share of the view taken by dirt from which on a person sees nothing else. Common practice. */
const HIDDEN_FROM = 0.6

const words: Readonly<Record<GlassLook, string>> = {
  'full and clear': 'full-and-clear',
  'full with bubbles': 'bubbles',
  'part full': 'part-full',
  empty: 'empty',
}

/**
 * What a person would say of a glass, as the id of a value.
 * @param glass as the model shows it
 * @returns for a glass on the fuel's way its look; for one that is empty in health where its fuel comes from
 * @source common practice
 */
export function glassValue(glass: GlassView): string {
  if (glass.dirt > HIDDEN_FROM) return 'not-to-be-seen'
  if (glass.from === 'valve') return 'running-from-valve'
  if (glass.from === 'drain') return 'rising-from-drain'
  if (glass.milky && glass.look !== 'empty') return 'milky'
  return words[glass.look]
}

/** From best to worst; of two causes together the worse one shows. */
const worse = [
  'full-and-clear',
  'milky',
  'bubbles',
  'part-full',
  'empty',
  'running-from-valve',
  'rising-from-drain',
  'not-to-be-seen',
]

/**
 * What a glass shows with two causes together: that which departs from health, and of two that do the worse.
 * @param one value with the first cause alone
 * @param other value with the second alone
 * @param health value with neither
 * @source common practice
 */
export function worseValue(one: string, other: string, health: string): string {
  if (one === health) return other
  if (other === health) return one
  return worse.indexOf(one) > worse.indexOf(other) ? one : other
}
