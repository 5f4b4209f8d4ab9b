import type { KindId } from '../quantity/types.ts'
import { acceptedRange, isWithin, spoken, type Limits } from './accepted.ts'
import type { FigureReader } from './read-figures.ts'
import type { CircuitData, Conditions, FigureCondition } from './types.ts'

/** What of the conditions is a figure, and how people speak of it. */
export const conditionFigures: Readonly<
  Record<FigureCondition, { readonly kind: KindId; readonly label: string; readonly unit?: string }>
> = {
  tankTemperature: { kind: 'temperature', label: 'Temperature of the tank' },
  ambientTemperature: { kind: 'temperature', label: 'Temperature of the surroundings' },
  tankLevel: { kind: 'ratio', label: 'Level of the tank', unit: '%' },
  airPressure: { kind: 'absolutePressure', label: 'Pressure of the air' },
}

const figureIds = Object.keys(conditionFigures) as FigureCondition[]

/** Least and largest that may be chosen. */
export interface ConditionRange extends Limits {
  readonly label: string
  /** Why not beyond, where that is not plain. */
  readonly why?: string
}

export type ConditionRanges = Readonly<Record<FigureCondition, ConditionRange>>

/**
 * The ranges of a circuit's data.
 * @param ranges of the data
 * @param reader takes the problems: a range that does not rise
 * @returns each in SI
 */
export function readRanges(ranges: CircuitData['ranges'], reader: FigureReader): ConditionRanges {
  const read = figureIds.map((id): [FigureCondition, ConditionRange] => {
    const figure = conditionFigures[id]
    const [minimum, maximum] = ranges[id].map((text, index) =>
      reader.figure(['ranges', id, index], text, figure.kind),
    ) as [number, number]
    if (minimum >= maximum)
      reader.refuse(['ranges', id], `«${ranges[id].join(' to ')}» does not rise; accepted: the least first`)
    const why = ranges.why?.[id]
    return [id, { ...figure, minimum, maximum, ...(why === undefined ? {} : { why }) }]
  })
  return Object.fromEntries(read) as Record<FigureCondition, ConditionRange>
}

/** Why a figure of the conditions cannot be used. */
export interface RefusedCondition {
  readonly condition: FigureCondition
  readonly reason: string
  readonly accepted: string
}

/**
 * The first figure of some conditions that lies outside what a circuit was modelled for.
 * @param conditions in SI
 * @param ranges of the circuit
 * @param typed how a value was written; as people speak of it where nobody wrote it
 * @returns which, with a sentence and what is accepted; undefined when all may be used
 */
export function refusedCondition(
  conditions: Pick<Conditions, FigureCondition>,
  ranges: ConditionRanges,
  typed: (condition: FigureCondition) => string | undefined = () => undefined,
): RefusedCondition | undefined {
  const condition = figureIds.find((id) => !isWithin(conditions[id], ranges[id]))
  if (condition === undefined) return undefined
  const range = ranges[condition]
  const why = range.why === undefined ? '' : `. ${range.why.replace(/\.$/, '')}`
  return {
    condition,
    reason: `${range.label}: ${typed(condition) ?? spoken(conditions[condition], range)} is outside what this circuit’s model was made for${why}`,
    accepted: acceptedRange(range),
  }
}
