import { changesAgainst, type Change } from '../../../calculators/circuit/changes.ts'
import type { CircuitState, Reading } from '../../../calculators/circuit/types.ts'
import { formatIn } from '../../../calculators/quantity/format.ts'
import { unitForSystem } from '../../../calculators/quantity/kinds.ts'
import type { KindId, UnitSystem } from '../../../calculators/quantity/types.ts'
import { fromSI, toSI, unitOf } from '../../../calculators/quantity/units.ts'
import { SEA_LEVEL } from './setting.ts'
import type { BenchData, Setting } from './types.ts'

/** Ratios are shares; a person reads them in per cent. */
const unitOfKind = (kind: KindId, system: UnitSystem): string =>
  kind === 'ratio' ? '%' : unitForSystem(kind, system)

/** A value or a change that is a smaller share of the accuracy than this is nothing to who reads it. */
const NOTHING = 0.1

/** A value as the instrument lets one read it: its last digit is the last one of the accuracy. */
export function shownValue(si: number, kind: KindId, system: UnitSystem, accuracy?: number): string {
  // No instrument shows 0.0009.
  const read = accuracy !== undefined && Math.abs(si) < NOTHING * accuracy ? 0 : si
  const options = accuracy !== undefined && accuracy > 0 ? { uncertainty: accuracy } : {}
  return formatIn(read, kind, unitOfKind(kind, system), options)
}

const stops = { lowest: ', at its lower stop', highest: ', at its upper stop' } as const

/** '412 kPa', and where the needle rests at a stop that too. */
export function shownReading({ value, kind, accuracy, atStop }: Reading, system: UnitSystem): string {
  return shownValue(value, kind, system, accuracy) + (atStop === undefined ? '' : stops[atStop])
}

/** The change with its sign: '−38 kPa'. */
export function shownChange(before: Reading, now: Reading, system: UnitSystem): string {
  const difference = now.value - before.value
  if (Math.abs(difference) <= NOTHING * now.accuracy) return 'none'
  const text = shownValue(difference, differenceKind(now.kind), system, now.accuracy)
  return difference > 0 ? `+${text}` : text
}

/**
 * A value that no instrument reads, to the place of its finest step.
 * @param finest below half of this it is nothing [SI]
 */
export function computedValue(si: number, kind: KindId, system: UnitSystem, finest: number): string {
  const unit = unitOfKind(kind, system)
  const step = 10 ** Math.floor(Math.log10(finest / unitOf(unit).factor))
  const value = fromSI(Math.abs(si) < finest / 2 ? 0 : si, unit, kind)
  const places = Math.floor(Math.log10(Math.max(Math.abs(value), step) / step)) + 1
  return formatIn(toSI(value, unit, kind), kind, unit, { digits: Math.max(1, places) })
}

/** A difference of two temperatures is no temperature. */
const differenceKind = (kind: KindId): KindId => {
  if (kind === 'temperature') return 'temperatureDifference'
  return kind === 'gaugePressure' || kind === 'absolutePressure' ? 'pressureDifference' : kind
}

export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1)

/** Label of a part or of a pipe, by its id. */
export function labelOf({ circuit }: BenchData, id: string): string {
  const element = circuit.elements.find((candidate) => candidate.id === id)
  if (element !== undefined) return element.label
  return circuit.connections.find(({ pipe }) => pipe?.id === id)?.pipe?.label ?? id
}

/** The conditions of a setting in words, by their names. */
export function conditionWords(
  data: BenchData,
  setting: Setting,
  system: UnitSystem,
): Readonly<Record<Exclude<keyof Setting, 'faults'>, string>> {
  const { state, fuel, tankTemperature, ambientTemperature, tankLevel, height } = setting
  return {
    state: data.states[state].title,
    fuel: data.fuels.find(({ id }) => id === fuel)?.title ?? fuel,
    tankTemperature: `fuel in the tank ${shownValue(tankTemperature, 'temperature', system)}`,
    ambientTemperature: `air outside ${shownValue(ambientTemperature, 'temperature', system)}`,
    tankLevel: `tank ${shownValue(tankLevel, 'ratio', system)} full`,
    height:
      height === SEA_LEVEL ? 'at sea level' : `at an altitude of ${shownValue(height, 'length', system)}`,
  }
}

/** The faults that are on, each with its severity in words: 'Fuel pump worn (40 %)'. */
export const faultWords = (
  { faults }: Pick<BenchData, 'faults'>,
  severities: Setting['faults'],
  system: UnitSystem,
): string[] =>
  faults.flatMap(({ id, title }) => {
    const severity = severities[id]
    return severity === undefined ? [] : [`${title} (${shownValue(severity, 'ratio', system)})`]
  })

/** What is set, in one sentence: paper shows no sliders. */
export function settingWords(data: BenchData, setting: Setting, system: UnitSystem): string {
  const faults = faultWords(data, setting.faults, system)
  return [
    ...Object.values(conditionWords(data, setting, system)),
    faults.length === 0 ? 'no fault' : `faults: ${faults.join('; ')}`,
  ].join(', ')
}

/** What of a change stands in one line: label, now, health. */
export function changeWords(
  data: BenchData,
  change: Change,
  system: UnitSystem,
): { label: string; now: string; before: string; trend: 'up' | 'down' | 'other' } {
  if (change.of === 'glass')
    return { label: labelOf(data, change.id), now: change.now, before: change.before, trend: 'other' }
  const shown = (value: number): string => shownValue(value, change.kind, system, change.accuracy)
  const others = change.alike === 0 ? '' : `, and ${change.alike} more like it`
  return {
    label: `${change.label}${others}`,
    now: shown(change.now),
    before: shown(change.before),
    trend: change.now > change.before ? 'up' : 'down',
  }
}

/** How many changes are told to who cannot see the strip. */
const SPOKEN_CHANGES = 2

/** The state in a sentence or two, for a screen reader: the glasses, and what has changed most. */
export function spokenState(
  data: BenchData,
  health: CircuitState,
  now: CircuitState,
  system: UnitSystem,
): string {
  const glasses = now.glasses.map(({ part, words }) => `${labelOf(data, part)}: ${words}.`)
  const readings = changesAgainst(health, now).filter((change) => change.of === 'reading')
  const told = readings.slice(0, SPOKEN_CHANGES).map((change) => {
    const { label, now: value, before } = changeWords(data, change, system)
    return `${label}: ${value}, in health ${before}.`
  })
  return [...glasses, ...(told.length > 0 ? told : ['All readings as in health.'])].join(' ')
}
