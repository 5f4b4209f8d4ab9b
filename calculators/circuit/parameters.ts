import { acceptedRange, isWithin, spoken } from './accepted.ts'
import type { CircuitModel, ModelPart } from './model.ts'
import { quoted } from '../quantity/number.ts'
import { partKinds, type Parameter, type PartKindId } from './part-kinds.ts'
import type { BentParameter } from './types.ts'
import { wrongOrders } from './wrong-order.ts'

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

/** Why a figure of a part cannot be used; where it is one cylinder's, which. */
export interface RefusedParameter extends Omit<BentParameter, 'value'> {
  readonly reason: string
  readonly accepted: string
}

export type ParametersReading =
  | { readonly ok: true; readonly parameters: Parameters }
  | { readonly ok: false; readonly refused: RefusedParameter }

/**
 * The parameters of a circuit with those that faults have bent.
 * @param model of the circuit
 * @param bent parameters in SI; the last one for a place counts
 * @returns the parameters, or which was bent that does not exist, lies too far or does not go with another
 */
export function parametersOf(model: CircuitModel, bent: readonly BentParameter[]): ParametersReading {
  const values = model.parts.map((part) => part.values)
  const cylinders = new Map<string, Float64Array>()
  for (const bend of bent) {
    const found = parameterAt(model, bend)
    if (!found.ok) return found
    const { parameter, about } = found
    if (!isWithin(bend.value, parameter))
      return {
        ok: false,
        refused: {
          ...bend,
          reason: `${about}: ${spoken(bend.value, parameter)} is out of range`,
          accepted: acceptedRange(parameter),
        },
      }
    const place = model.parts.findIndex(({ id }) => id === bend.part)
    if (bend.cylinder === undefined) {
      values[place] = { ...values[place], [bend.parameter]: bend.value } as Values
      cylinders.delete(bend.parameter)
      continue
    }
    const parameterId = bend.parameter as CylinderParameter
    const list =
      cylinders.get(bend.parameter) ??
      new Float64Array(model.cylinders).fill(values[model.injectors]?.[parameterId] ?? 0)
    list[bend.cylinder - 1] = bend.value
    cylinders.set(bend.parameter, list)
  }
  for (const { part } of bent) {
    const place = model.parts.findIndex(({ id }) => id === part)
    const [wrong] = wrongOrders({ ...(model.parts[place] as ModelPart), values: values[place] as Values })
    if (wrong)
      return {
        ok: false,
        refused: {
          part,
          parameter: wrong.parameter,
          reason: wrong.message,
          accepted: wrong.accepted,
        },
      }
  }
  const common = values[model.injectors]
  const ofCylinder = (parameter: CylinderParameter, cylinder: number): number =>
    cylinders.get(parameter)?.[cylinder] ?? common?.[parameter] ?? 0
  return { ok: true, parameters: { values, ofCylinder } }
}

type ParameterPlace =
  | { readonly ok: true; readonly parameter: Parameter; readonly about: string }
  | { readonly ok: false; readonly refused: RefusedParameter }

/**
 * A parameter of a part, or of one cylinder.
 * @param model of the circuit
 * @param place ids of part and parameter; the cylinder, 1 upward, where it is one cylinder's
 * @returns its kind and limits with words on whose it is, or what of the place does not exist
 */
export function parameterAt(model: CircuitModel, place: Omit<BentParameter, 'value'>): ParameterPlace {
  const { part: id, parameter: name, cylinder } = place
  const refused = (reason: string, accepted: string): ParameterPlace => ({
    ok: false,
    refused: { ...place, reason, accepted },
  })
  const part = model.parts.find((one) => one.id === id)
  if (!part)
    return refused(`${quoted(id)} is no part of ${model.title}`, model.parts.map((one) => one.id).join(', '))
  const known: Readonly<Record<string, Parameter>> = partKinds[part.kind].parameters
  const parameter = Object.hasOwn(known, name) ? known[name] : undefined
  if (!parameter)
    return refused(
      `${quoted(name)} is no parameter of ${part.label}`,
      Object.keys(known).join(', ') || 'none: it has no figure',
    )
  const about = `${part.label}, ${parameter.label}`
  if (cylinder === undefined) return { ok: true, parameter, about }
  if (!parameter.eachCylinder)
    return refused(`${about}: not each cylinder has its own`, 'one figure, without a cylinder')
  return Number.isInteger(cylinder) && cylinder >= 1 && cylinder <= model.cylinders
    ? { ok: true, parameter, about }
    : refused(`${about}: there is no cylinder ${cylinder}`, `1 to ${model.cylinders}`)
}
