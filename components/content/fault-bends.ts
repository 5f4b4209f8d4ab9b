import { partKinds, type Parameter, type PartKindId } from '../../calculators/circuit/part-kinds.ts'
import { figureReader, type Path } from '../../calculators/circuit/read-figures.ts'
import type { CircuitProblem } from '../../calculators/circuit/validate.ts'
import { rawCircuit, setPointsOf, idsOfFolder } from './ids.ts'

/** A bend as its file gives it, before it is known that its fields fit together. */
export interface RawBend {
  readonly part?: string | undefined
  readonly parameter?: string | undefined
  readonly cylinders?: 'all' | readonly number[] | undefined
  readonly condition?: keyof typeof conditionKinds | 'fuel' | undefined
  readonly to?: string | undefined
  readonly times?: number | undefined
}

/** What a fault can change of the fuel and the tank, and within which limits, in SI. */
export const conditionKinds = {
  tankLevel: { kind: 'ratio', minimum: 0, maximum: 1 },
  tankTemperature: { kind: 'temperature', minimum: 243.15, maximum: 423.15 },
  thinned: { kind: 'ratio', minimum: 0, maximum: 0.5 },
  water: { kind: 'ratio', minimum: 0, maximum: 0.2 },
} as const

interface Place {
  readonly kind: PartKindId
  readonly count: number
  readonly figures: Readonly<Record<string, string | undefined>>
}

const problem = (path: (string | number)[], message: string): CircuitProblem => ({ path, message })

/**
 * What is wrong with one bend of a fault: a part or a figure that the circuit does not have, cylinders past its count,
 * a figure of the wrong kind or outside what is possible, and fields that do not go together.
 * @param circuit id of the circuit
 * @param bend as its file gives it
 * @returns the problems, their paths beginning at the bend
 */
export function bendProblems(circuit: string, bend: RawBend): CircuitProblem[] {
  if (bend.condition !== undefined) {
    const stray = (['part', 'parameter', 'cylinders'] as const).filter((field) => bend[field] !== undefined)
    if (stray.length > 0) {
      return stray.map((field) =>
        problem([field], `a bend of a condition has no ${field}; allowed: condition with to or times`),
      )
    }
    return bend.condition === 'fuel'
      ? fuelProblems(bend)
      : courseProblems(bend, conditionKinds[bend.condition])
  }
  const places = placesOf(circuit)
  const place = bend.part === undefined ? undefined : places.get(bend.part)
  if (!place) {
    const allowed = [...places.keys()].join(', ')
    return [problem(['part'], `«${bend.part ?? ''}» is no part or pipe of ${circuit}; allowed: ${allowed}`)]
  }
  const known: Readonly<Record<string, Parameter>> = partKinds[place.kind].parameters
  const name = bend.parameter ?? ''
  const parameter = Object.hasOwn(known, name) ? known[name] : undefined
  if (!parameter) {
    const allowed = Object.keys(known).join(', ') || 'none'
    return [
      problem(
        ['parameter'],
        `«${name}» is no figure of a ${partKinds[place.kind].title.toLowerCase()}; allowed: ${allowed}`,
      ),
    ]
  }
  return [
    ...cylinderProblems(bend, parameter, place.count),
    ...courseProblems(bend, parameter, healthOf(circuit, name, parameter, place)),
  ]
}

function cylinderProblems({ cylinders }: RawBend, parameter: Parameter, count: number): CircuitProblem[] {
  const allowed = `all, or numbers from 1 to ${count}`
  if (!parameter.eachCylinder) {
    return cylinders === undefined
      ? []
      : [
          problem(
            ['cylinders'],
            `«${String(cylinders)}»: this figure is not each cylinder's own; allowed: no cylinders`,
          ),
        ]
  }
  if (cylinders === undefined) return [problem(['cylinders'], `this field is missing; allowed: ${allowed}`)]
  if (cylinders === 'all') return []
  return cylinders.flatMap((number, index) =>
    number <= count && cylinders.indexOf(number) === index
      ? []
      : [problem(['cylinders', index], `«${number}» is no cylinder or stands twice; allowed: ${allowed}`)],
  )
}

/** A course leads to a figure or multiplies the one in health, and stays within what is possible. */
function courseProblems(
  { to, times }: RawBend,
  limits: Pick<Parameter, 'kind' | 'minimum' | 'maximum'>,
  health?: number,
): CircuitProblem[] {
  if ((to === undefined) === (times === undefined)) {
    return [problem([], 'one of to and times stands here; allowed: to: a figure, or times: a number')]
  }
  if (to !== undefined) {
    const reader = figureReader({})
    reader.figure(['to'], to, limits.kind, limits)
    return reader.problems
  }
  const reached = (health ?? 0) * (times ?? 1)
  if (health === undefined || health === 0) {
    return [problem(['times'], `«${times}»: there is nothing in health to multiply; allowed: to: a figure`)]
  }
  return reached >= limits.minimum && reached <= limits.maximum
    ? []
    : [
        problem(
          ['times'],
          `«${times}» leads out of range; allowed: ${limits.minimum / health} to ${limits.maximum / health}`,
        ),
      ]
}

function fuelProblems({ to, times }: RawBend): CircuitProblem[] {
  const fuels = idsOfFolder('fuels')
  if (times !== undefined)
    return [problem(['times'], `a fuel is no number; allowed: to: ${fuels.join(', ')}`)]
  return to !== undefined && fuels.includes(to)
    ? []
    : [problem(['to'], `«${to ?? ''}» is not an id of content/fuels; allowed: ${fuels.join(', ')}`)]
}

/** The figure in health, in SI; nothing where the circuit's data is wrong, which its own check says. */
function healthOf(circuit: string, name: string, parameter: Parameter, place: Place): number | undefined {
  const text = place.figures[name]
  if (text === undefined) return parameter.otherwise
  const path: Path = []
  const value = figureReader(setPointsOf(rawCircuit(circuit).plant)).figure(path, text, parameter.kind)
  return Number.isFinite(value) ? value : undefined
}

/** What a fault can sit at: every element, and every line with a length. */
function placesOf(circuit: string): Map<string, Place> {
  const { elements, connections } = rawCircuit(circuit)
  return new Map<string, Place>([
    ...elements.map(
      ({ id, count, model }) => [id, { kind: model.kind, count: count ?? 1, figures: model }] as const,
    ),
    ...connections.flatMap(({ pipe }) =>
      pipe ? [[pipe.id, { kind: 'line', count: 1, figures: pipe }] as const] : [],
    ),
  ])
}
