import { GRAVITY } from '../hydraulics/hydrostatics.ts'
import { acceptedRange, isWithin, spoken, type Limits } from './accepted.ts'
import { conditionFigures, refusedCondition } from './condition-ranges.ts'
import { demandOf, type Demand } from './engine.ts'
import { fluidOf, type Fluid } from './fluid.ts'
import { fuelAtNodes, type FuelAtNodes } from './fuel-at-nodes.ts'
import type { CircuitModel } from './model.ts'
import { parametersOf, type Parameters } from './parameters.ts'
import { topologyOf, type Topology } from './topology.ts'
import type { BentConditions, BentParameter, Conditions } from './types.ts'

/** All that stays the same while one state is sought. */
export interface Situation {
  readonly model: CircuitModel
  readonly topology: Topology
  readonly parameters: Parameters
  readonly conditions: Conditions
  readonly fluid: Fluid
  /** What of it was worked out already; filled in as it is asked for. */
  readonly atNodes: FuelAtNodes
  /** The usual fuel, on which the engine's figures rest. */
  readonly usualFluid: Fluid
  readonly demand: Demand
  /** Density of the fuel in the tank: flows are counted as volumes of it, so that they add up everywhere. [kg/m³] */
  readonly reference: number
}

export interface Bent {
  readonly parameters: readonly BentParameter[]
  readonly conditions: BentConditions
}

const topologies = new WeakMap<CircuitModel, Topology>()

function knownTopology(model: CircuitModel): Topology {
  const known = topologies.get(model) ?? topologyOf(model)
  topologies.set(model, known)
  return known
}

/** Within which faults may bend what surrounds the circuit; what a person chooses is held by the circuit's ranges. */
const limits: Readonly<Record<Exclude<keyof BentConditions, 'fuel'>, Limits & { readonly label: string }>> = {
  tankTemperature: { ...conditionFigures.tankTemperature, minimum: 233.15, maximum: 423.15 },
  tankLevel: { ...conditionFigures.tankLevel, minimum: 0, maximum: 1 },
  thinned: { kind: 'ratio', label: 'Share of thinner fuel', minimum: 0, maximum: 0.5, unit: '%' },
  water: { kind: 'ratio', label: 'Share of water', minimum: 0, maximum: 0.2, unit: '%' },
}

function refusedBend(bent: BentConditions): string | undefined {
  for (const [id, range] of Object.entries(limits)) {
    const value = bent[id as keyof typeof limits]
    if (value !== undefined && !isWithin(value, range))
      return `${range.label}: ${spoken(value, range)} is out of range; accepted: ${acceptedRange(range)}`
  }
  return undefined
}

/**
 * What a state is sought for.
 * @param model of the circuit
 * @param given conditions that a person chose
 * @param bent what faults do to parts and conditions
 * @returns the situation, or a sentence that says what of it is refused
 */
export function situationOf(
  model: CircuitModel,
  given: Conditions,
  bent: Bent,
): { readonly ok: true; readonly situation: Situation } | { readonly ok: false; readonly reason: string } {
  const { tankLevel, tankTemperature, fuel } = bent.conditions
  const conditions: Conditions = {
    ...given,
    ...(tankLevel === undefined ? {} : { tankLevel }),
    ...(tankTemperature === undefined ? {} : { tankTemperature }),
    ...(fuel === undefined ? {} : { fuel }),
  }
  const delivered = Object.hasOwn(model.fuels, conditions.fuel) ? model.fuels[conditions.fuel] : undefined
  const usual = model.fuels[model.usual.fuel]
  if (!delivered || !usual)
    return refused(
      `«${conditions.fuel}» is no fuel of ${model.title}; accepted: ${Object.keys(model.fuels).join(', ')}`,
    )
  const wrong = refusedCondition(given, model.ranges)
  if (wrong !== undefined) return refused(`${wrong.reason}; accepted: ${wrong.accepted}`)
  const bend = refusedBend(bent.conditions)
  if (bend !== undefined) return refused(bend)
  const read = parametersOf(model, bent.parameters)
  if (!read.ok) return refused(`${read.refused.reason}; accepted: ${read.refused.accepted}`)
  const fluid = fluidOf(delivered, bent.conditions)
  const own = read.parameters.values[model.injectors]
  const heat = { atIdle: own?.heatAtIdle ?? 0, atFull: own?.heatAtFull ?? 0 }
  return {
    ok: true,
    situation: {
      model,
      topology: knownTopology(model),
      parameters: read.parameters,
      conditions,
      fluid,
      atNodes: fuelAtNodes(model.nodes.length),
      usualFluid: fluidOf(usual, {}),
      demand: demandOf(model, conditions.state, conditions.airPressure, heat),
      reference: fluid.density(conditions.tankTemperature),
    },
  }
}

const refused = (reason: string) => ({ ok: false, reason }) as const

/**
 * Pressure of each node that a tank or the air holds. [Pa]
 * @param situation of the state
 * @param onSurface absolute pressure on the fuel in the tanks [Pa]
 * @param into filled in at the places of those nodes; the others stay
 */
export function setFixedPressures(situation: Situation, onSurface: number, into: Float64Array): void {
  const { model, topology, conditions, reference, parameters } = situation
  for (const place of topology.fixed) {
    const node = model.nodes[place]
    if (node?.fixed === undefined) continue
    if (node.fixed === 'cylinders') {
      into[place] = conditions.airPressure
      continue
    }
    const depth = conditions.tankLevel * (parameters.values[node.fixed]?.depth ?? 0)
    const cover = depth - node.height
    // A line that ends above the fuel ends in the air of the tank.
    into[place] = onSurface + reference * GRAVITY * (node.mouth ? cover : Math.max(0, cover))
  }
}
