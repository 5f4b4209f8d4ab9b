import type { KindId } from '../quantity/types.ts'

export interface Range {
  readonly minimum: number
  readonly maximum: number
}

/** Half-width of the interval within which the true value lies; absolute in SI, or a share of the value. */
export type Accuracy = { readonly absolute: number } | { readonly relative: number }

/** Shown and asked for only when another input, a choice, has one of these values. */
export interface Condition {
  readonly input: string
  readonly oneOf: readonly string[]
}

export interface QuantityInput {
  readonly type: 'quantity'
  /** Plain words, as on the field: 'Viscosity at the first temperature'. */
  readonly label: string
  /** Symbol in the equation and in the working: 'ν₁'. */
  readonly symbol: string
  readonly help: string
  readonly kind: KindId
  /** Unit ids offered, when fewer or others than the kind's own; the first is shown by default. */
  readonly units?: readonly string[]
  /** SI. Outside this the value is refused. */
  readonly physical: Range
  /** SI. Outside this the method is not valid; a notice says so. */
  readonly valid?: Range
  /** SI. */
  readonly default: number
  /** Default accuracy; the person can change it. Leave out for a value that is exact by nature. */
  readonly accuracy?: Accuracy
  readonly when?: Condition
}

export interface ChoiceInput {
  readonly type: 'choice'
  readonly label: string
  readonly help: string
  readonly options: readonly { readonly value: string; readonly label: string }[]
  readonly default: string
  readonly when?: Condition
}

export type TableRow = Readonly<Record<string, number>>

export interface TableInput {
  readonly type: 'table'
  readonly label: string
  readonly help: string
  /** Columns by id, each a quantity whose `default` is not used. */
  readonly columns: Readonly<Record<string, Omit<QuantityInput, 'default' | 'when'>>>
  readonly rows: Range
  /** What one row is, as it stands before its number: 'Cylinder'. 'Row' if left out. */
  readonly rowName?: string
  readonly default: readonly TableRow[]
  readonly when?: Condition
}

export type Input = QuantityInput | ChoiceInput | TableInput
export type Inputs = Readonly<Record<string, Input>>

export type InputValue = number | string | readonly TableRow[]

/** The values of a set of inputs, with the type that each declaration asks for. */
export type ValuesOf<I extends Inputs> = {
  readonly [K in keyof I]: I[K] extends QuantityInput
    ? number
    : I[K] extends ChoiceInput
      ? I[K]['options'][number]['value']
      : readonly TableRow[]
}

export interface QuantityOutput {
  readonly type: 'quantity'
  readonly label: string
  readonly symbol: string
  readonly kind: KindId
  readonly units?: readonly string[]
}

/** An outcome in words: 'within', 'outside', 'cannot be told with this gauge'. */
export interface VerdictOutput {
  readonly type: 'verdict'
  readonly label: string
  readonly options: Readonly<Record<string, { readonly label: string; readonly grade: Grade }>>
  /** The method keeps the accuracy of its inputs in mind itself: no notice says that it could be another outcome. */
  readonly weighsAccuracy?: true
}

export type Output = QuantityOutput | VerdictOutput
export type Outputs = Readonly<Record<string, Output>>

export type OutputsOf<O extends Outputs> = {
  readonly [K in keyof O]: O[K] extends QuantityOutput
    ? number
    : keyof (O[K] & VerdictOutput)['options'] & string
}

export type Grade = 'good' | 'information' | 'caution' | 'action'

export interface Notice {
  readonly grade: Grade
  readonly text: string
}

/** One line of the working, with the person's own numbers. */
export interface Step {
  readonly label: string
  readonly symbol: string
  /** The rule in symbols, plain text: 'ν₁ + 0.7 + exp(−1.47 − 1.84ν₁ − 0.51ν₁²)'. */
  readonly rule: string
  readonly value: number
  /** 'ratio' for a plain number. */
  readonly kind: KindId
  readonly unit?: string
}

/** Why no number is given. `field` is an input's id, or '' when several inputs together are at fault. */
export interface Refusal {
  readonly field: string
  readonly reason: string
  readonly accepted: string
}

export type Computation<O extends Outputs> =
  | {
      readonly outputs: OutputsOf<O>
      readonly steps: readonly Step[]
      readonly notices: readonly Notice[]
      /** SI half-widths that the method works out itself, from accuracies that are inputs of their own. */
      readonly uncertainties?: Readonly<Partial<Record<keyof O & string, number>>>
    }
  | { readonly refusal: Refusal }

export interface ChartMark {
  readonly label: string
  readonly x: number
  readonly y: number
}

export interface ChartDefinition<I extends Inputs, O extends Outputs> {
  /** Id of the input along the horizontal axis and of the output along the vertical one. */
  readonly x: keyof I & string
  readonly y: keyof O & string
  /** Another output with these choices, which leave `y` the same all along the curve. */
  readonly instead?: { readonly y: keyof O & string; readonly when: Condition }
  readonly yScale: 'linear' | 'log'
  /** SI range of the horizontal axis for these inputs. */
  readonly range: (input: ValuesOf<I>) => Range
  /** Points other than the working point, for instance the two measured ones. */
  readonly marks?: (input: ValuesOf<I>) => readonly ChartMark[]
  /** Horizontal lines: a limit on the output, SI. */
  readonly limits?: (input: ValuesOf<I>) => readonly { readonly label: string; readonly y: number }[]
}

/** An axis of a chart of points. */
export interface PointsAxis {
  readonly label: string
  readonly symbol: string
  readonly kind: KindId
  /** The input or 'table.column' in whose unit the axis is drawn; without one, the unit of the person's system. */
  readonly follows?: string
}

export interface MeasuredPoint extends ChartMark {
  /** Drawn apart and named in the key. */
  readonly standsOut?: boolean
}

export interface ChartLine {
  readonly label: string
  readonly points: readonly { readonly x: number; readonly y: number }[]
  /** An edge of a band, drawn lighter than the line itself. */
  readonly edge?: boolean
}

/** A chart of what was read: points of a table with a line and limits, all SI. */
export interface PointsDefinition<I extends Inputs> {
  readonly x: PointsAxis
  readonly y: PointsAxis
  readonly points: (input: ValuesOf<I>) => readonly MeasuredPoint[]
  readonly lines?: (input: ValuesOf<I>) => readonly ChartLine[]
  readonly limits?: (input: ValuesOf<I>) => readonly { readonly label: string; readonly y: number }[]
}

/** A published case. Inputs and expected values are written as the source prints them, with units. */
export interface PublishedCase {
  readonly description: string
  /** Id in content/sources, or 'common-practice'. */
  readonly source: string
  /** Table, example or page in that source. */
  readonly place: string
  readonly input: Readonly<Record<string, string | readonly Readonly<Record<string, string>>[]>>
  readonly expected: Readonly<Record<string, string>>
  readonly relativeTolerance: number
  readonly whyTolerance: string
  /** The source bears no more than that the result is of the right size; `whyTolerance` says why. */
  readonly plausibilityOnly?: boolean
  /** The value is recalled, not read in the source. */
  readonly fromMemory?: boolean
}

/** A fuel as calculators see it, SI. */
export interface FuelRecord {
  readonly id: string
  readonly title: string
  readonly densityAt15: number
  /** Measured pairs, coldest first; at least two. */
  readonly viscosities: readonly { readonly temperature: number; readonly kinematicViscosity: number }[]
  readonly cloudPoint: number
}

export interface Calculator<I extends Inputs = Inputs, O extends Outputs = Outputs> {
  /** The folder's name. */
  readonly id: string
  readonly title: string
  /** One line: the question it answers. */
  readonly purpose: string
  /** Shop words and other names by which people look for it. */
  readonly alsoCalled?: readonly string[]
  /** TeX, rendered to MathML at build time, and the same in a sentence. */
  readonly equation: { readonly tex: string; readonly words: string }
  /** Ids in content/sources. */
  readonly sources: readonly string[]
  /** In words: where the method holds. */
  readonly validity: string
  readonly inputs: I
  readonly outputs: O
  readonly compute: (input: ValuesOf<I>) => Computation<O>
  readonly chart?: ChartDefinition<I, O>
  /** In place of `chart`, where readings of a table are drawn. */
  readonly points?: PointsDefinition<I>
  /** Fills inputs from a fuel of the handbook's data. */
  readonly fromFuel?: (fuel: FuelRecord) => Readonly<Partial<Record<keyof I & string, number>>>
  /** The first one is the worked example on the page. */
  readonly cases: readonly PublishedCase[]
}
