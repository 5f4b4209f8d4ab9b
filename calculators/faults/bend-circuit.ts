import type { CircuitModel } from '../circuit/model.ts'
import { parameterAt, type Values } from '../circuit/parameters.ts'
import type { SetPoint } from '../circuit/read-figures.ts'
import type { BentConditions, BentParameter, Conditions } from '../circuit/types.ts'
import { readFigure } from '../quantity/figure.ts'
import type { KindId } from '../quantity/types.ts'
import type { Bend, FaultData } from './types.ts'

/** From this severity on another fuel has been delivered; below it, the fuel is the one that was chosen. */
const OTHER_FUEL_FROM = 0.5

export interface SevereFault {
  readonly fault: FaultData
  /** 0 to 1. */
  readonly severity: number
}

export interface BentCircuit {
  readonly parameters: readonly BentParameter[]
  readonly conditions: BentConditions
}

export type BendReading =
  { readonly ok: true; readonly bent: BentCircuit } | { readonly ok: false; readonly reason: string }

type OpenConditions = { -readonly [Id in keyof BentConditions]: BentConditions[Id] }

/** A refusal inside of what is bent; the sentence is told to the person. */
class Refused extends Error {}

/**
 * What faults do to a circuit, one or several together. Two that bend the same parameter bend it one after the
 * other, in the order of their ids and so always alike: a resistance that both multiply grows by both, one that both
 * lead somewhere comes to lie between. A fault of severity 0 bends nothing.
 * @param model of the circuit
 * @param circuit its id, by which faults give their bends
 * @param faults each with its severity, 0 (as in health) to 1
 * @param conditions that a person chose, from which faults that bend them start
 * @param setPoints of the plant, which figures of the bends may name
 * @returns the bent parameters in SI and conditions, or a sentence that names fault, value and what is accepted
 * @source common practice
 */
export function bendCircuit(
  model: CircuitModel,
  circuit: string,
  faults: readonly SevereFault[],
  conditions: Conditions,
  setPoints: Readonly<Record<string, SetPoint>>,
): BendReading {
  const parameters = new Map<string, BentParameter>()
  const bentConditions: OpenConditions = {}
  try {
    const ordered = faults.toSorted((one, other) => (one.fault.id < other.fault.id ? -1 : 1))
    for (const { fault, severity } of ordered) {
      const bends = fault.bends[circuit]
      if (bends === undefined) throw new Refused(`${fault.title}: ${model.title} cannot have this fault.`)
      if (!(severity >= 0 && severity <= 1))
        throw new Refused(`${fault.title}: read the severity ${severity}; accepted: 0 to 1.`)
      if (severity === 0) continue
      for (const bend of bends) {
        if ('part' in bend) bendPart(model, bend, severity, setPoints, parameters)
        else bendCondition(bend, severity, conditions, setPoints, bentConditions)
      }
    }
  } catch (refusal) {
    if (refusal instanceof Refused) return { ok: false, reason: refusal.message }
    throw refusal
  }
  return { ok: true, bent: { parameters: [...parameters.values()], conditions: bentConditions } }
}

type PartBend = Extract<Bend, { part: string }>
type ConditionBend = Exclude<Bend, PartBend>

function bendPart(
  model: CircuitModel,
  bend: PartBend,
  severity: number,
  setPoints: Readonly<Record<string, SetPoint>>,
  into: Map<string, BentParameter>,
): void {
  const found = parameterAt(model, { part: bend.part, parameter: bend.parameter })
  if (!found.ok) throw new Refused(`${found.refused.reason}; accepted: ${found.refused.accepted}.`)
  const limits = found.parameter
  const parameter = bend.parameter as keyof Values
  const inHealth = model.parts.find(({ id }) => id === bend.part)?.values[parameter] ?? 0
  const all = bend.cylinders === 'all' || (limits.eachCylinder && bend.cylinders === undefined)
  const cylinders = all
    ? Array.from({ length: model.cylinders }, (_, index) => index + 1)
    : (bend.cylinders ?? [undefined])
  for (const cylinder of cylinders) {
    const key = `${bend.part} ${parameter} ${cylinder ?? ''}`
    const before = into.get(key)?.value ?? inHealth
    // Two faults together may ask for more than there can be.
    const value = Math.min(
      limits.maximum,
      Math.max(limits.minimum, courseValue(bend, before, severity, limits.kind, setPoints)),
    )
    into.set(key, { part: bend.part, parameter, value, ...(cylinder === undefined ? {} : { cylinder }) })
  }
}

function bendCondition(
  bend: ConditionBend,
  severity: number,
  conditions: Conditions,
  setPoints: Readonly<Record<string, SetPoint>>,
  into: OpenConditions,
): void {
  if (bend.condition === 'fuel') {
    if (severity >= OTHER_FUEL_FROM) into.fuel = bend.to
    return
  }
  const { condition } = bend
  const health = { ...conditions, thinned: 0, water: 0 }[condition]
  const kind = condition === 'tankTemperature' ? 'temperature' : 'ratio'
  into[condition] = courseValue(bend, into[condition] ?? health, severity, kind, setPoints)
}

function courseValue(
  course: { readonly to: string } | { readonly times: number },
  health: number,
  severity: number,
  kind: KindId,
  setPoints: Readonly<Record<string, SetPoint>>,
): number {
  if ('times' in course) return health * course.times ** severity
  const figure = Object.hasOwn(setPoints, course.to) ? (setPoints[course.to]?.value ?? '') : course.to
  const reading = readFigure(figure, kind)
  if (!reading.ok) throw new Refused(`«${course.to}»: ${reading.reason}; accepted: ${reading.accepted}.`)
  return health + severity * (reading.si - health)
}
