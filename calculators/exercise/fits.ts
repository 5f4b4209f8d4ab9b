import type { CheckResult, SeenGlass } from '../checks/types.ts'
import type { GlassLook } from '../circuit/types.ts'

/** From health to nothing: a fault that grows takes a glass through these in turn. */
const looks: readonly GlassLook[] = ['full and clear', 'full with bubbles', 'part full', 'empty']

/** What was seen and what one expects to see may each be off by the accuracy of the instrument. */
const BOTH_OFF = 2

const within = (value: number, bounds: readonly number[], by: number): boolean =>
  value >= Math.min(...bounds) - by && value <= Math.max(...bounds) + by

function glassFits(seen: SeenGlass, corners: readonly SeenGlass[]): boolean {
  const places = corners.map(({ look }) => looks.indexOf(look))
  return (
    within(looks.indexOf(seen.look), places, 0) &&
    corners.some(({ from }) => from === seen.from) &&
    corners.some(({ milky }) => milky === seen.milky) &&
    corners.some(({ dirty }) => dirty === seen.dirty)
  )
}

/**
 * Whether what a check told can come from a cause whose severity lies between the corners: each reading lies
 * between theirs, widened by twice what the instrument may be off by; each glass has a look between theirs; and an
 * inspection says the same.
 * @param seen what the check told [SI]
 * @param corners what it would tell at the ends of the range of severities [SI]
 * @source common practice
 */
export function fits(seen: CheckResult, corners: readonly CheckResult[]): boolean {
  return (
    seen.readings.every((reading, place) => {
      const values = corners.flatMap(({ readings }) => readings[place]?.value ?? [])
      return within(reading.value, values, BOTH_OFF * reading.accuracy)
    }) &&
    seen.glasses.every((glass, place) =>
      glassFits(
        glass,
        corners.flatMap(({ glasses }) => glasses[place] ?? []),
      ),
    ) &&
    seen.felt.every(({ passes }, place) => corners.some(({ felt }) => felt[place]?.passes === passes)) &&
    corners.some(({ says }) => says.join() === seen.says.join())
  )
}
