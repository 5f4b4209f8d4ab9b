import type { CircuitState } from '../../../calculators/circuit/types.ts'
import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import type { BenchData, BenchFault, Setting } from './types.ts'
import { shownValue } from './words.ts'

/** Conditions that a fault can take into its own hands. */
type Bendable = 'tankTemperature' | 'tankLevel' | 'fuel'

const joined = new Intl.ListFormat('en-GB', { type: 'conjunction' })

/**
 * What stands beside a condition that a fault sets in the person's place, so that nobody wonders why a slider does
 * nothing: which fault it is, and where the condition stands in truth.
 * @param now the state that was solved; without it nothing is known and nothing is said
 * @returns a sentence for each condition that a fault has moved
 */
export function setByFaults(
  data: BenchData,
  setting: Setting,
  now: CircuitState | undefined,
  system: UnitSystem,
): Readonly<Partial<Record<keyof Setting, string | undefined>>> {
  if (now === undefined) return {}
  const { tankTemperature, tankLevel, fuel } = now.conditions
  const note = (condition: Bendable, truth: string): string | undefined => {
    const bending = data.faults.filter(
      (fault) => (setting.faults[fault.id] ?? 0) > 0 && bends(data, fault, condition),
    )
    if (bending.length === 0 || now.conditions[condition] === setting[condition]) return undefined
    const whole = condition === 'fuel' || bending.some(({ id }) => setting.faults[id] === 1)
    const by = joined.format(bending.map(({ title }) => `«${title}»`))
    return `${by}: now ${truth}. What is set here has ${whole ? 'no effect' : 'part of its effect only'}.`
  }
  return {
    tankTemperature: note('tankTemperature', shownValue(tankTemperature, 'temperature', system)),
    tankLevel: note('tankLevel', shownValue(tankLevel, 'ratio', system)),
    fuel: note('fuel', data.fuels.find(({ id }) => id === fuel)?.title ?? fuel),
  }
}

const bends = ({ id }: BenchData, fault: BenchFault, condition: Bendable): boolean =>
  (fault.bends[id] ?? []).some((bend) => 'condition' in bend && bend.condition === condition)
