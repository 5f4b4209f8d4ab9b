import type { CircuitModel } from './model.ts'
import { partKinds, type Parameter, type PartKindId } from './part-kinds.ts'
import type { BentParameter } from './types.ts'

type ParameterId = { [Kind in PartKindId]: keyof (typeof partKinds)[Kind]['parameters'] }[PartKindId]

/** Parameters of a part in SI; those that its kind states are there. */
export type Values = Readonly<Record<ParameterId, number>>

/** Parameters that each cylinder has of its own. */
export type CylinderParameter = 'inletLoading' | 'returnLoading' | 'gasHole' | 'plungerLeak' | 'drip'

/** Parameters of a circuit as faults leave them. */
export interface Parameters {
  /** By part. */
  readonly values: readonly Values[]
  /** A parameter of the injectors, by cylinder. */
  readonly ofCylinder: (parameter: CylinderParameter, place: number) => number
}

export type ParametersReading =
  { readonly ok: true; readonly parameters: Parameters } | { readonly ok: false; readonly reason: string }

/**
 * The parameters of a circuit with those that faults have bent.
 * @param model of the circuit
 * @param bent parameters in SI; the last one for a place counts
 * @returns the parameters, or a sentence that names what was bent that does not exist, or how far too far
 */
export function parametersOf(model: CircuitModel, bent: readonly BentParameter[]): ParametersReading {
  const values = model.parts.map((part) => part.values)
  const cylinders = new Map<string, Float64Array>()
  for (const bend of bent) {
    const place = model.parts.findIndex(({ id }) => id === bend.part)
    const part = model.parts[place]
    if (!part) return refused(`«${bend.part}» is no part of ${model.title}`)
    const known: Readonly<Record<string, Parameter>> = partKinds[part.kind].parameters
    const parameter = Object.hasOwn(known, bend.parameter) ? known[bend.parameter] : undefined
    if (!parameter)
      return refused(
        `«${bend.parameter}» is no parameter of ${part.label}; accepted: ${Object.keys(known).join(', ')}`,
      )
    const { minimum, maximum } = parameter
    if (!(bend.value >= minimum && bend.value <= maximum))
      return refused(
        `${part.label}, ${parameter.label}: ${bend.value} is out of range; accepted: ${minimum} to ${maximum} (SI)`,
      )
    if (bend.cylinder === undefined) {
      values[place] = { ...values[place], [bend.parameter]: bend.value } as Values
      continue
    }
    const { cylinder } = bend
    if (!parameter.eachCylinder || !Number.isInteger(cylinder) || cylinder < 1 || cylinder > model.cylinders)
      return refused(
        `${part.label}, ${parameter.label}: cylinder ${cylinder} does not have its own; accepted: 1 to ${model.cylinders}, of injectors`,
      )
    const parameterId = bend.parameter as CylinderParameter
    const list =
      cylinders.get(bend.parameter) ??
      new Float64Array(model.cylinders).fill(values[model.injectors]?.[parameterId] ?? 0)
    list[cylinder - 1] = bend.value
    cylinders.set(bend.parameter, list)
  }
  const common = values[model.injectors]
  const ofCylinder = (parameter: CylinderParameter, cylinder: number): number =>
    cylinders.get(parameter)?.[cylinder] ?? common?.[parameter] ?? 0
  return { ok: true, parameters: { values, ofCylinder } }
}

const refused = (reason: string): ParametersReading => ({ ok: false, reason })
