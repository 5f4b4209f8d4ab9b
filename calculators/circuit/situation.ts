import { GRAVITY } from '../hydraulics/hydrostatics.ts'
import { demandOf, type Demand } from './engine.ts'
import { fluidOf, type Fluid } from './fluid.ts'
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

const limits = {
  tankTemperature: { label: 'Temperature of the tank', minimum: 233.15, maximum: 423.15, unit: ' K' },
  ambientTemperature: {
    label: 'Temperature of the surroundings',
    minimum: 213.15,
    maximum: 343.15,
    unit: ' K',
  },
  tankLevel: { label: 'Level of the tank', minimum: 0, maximum: 1, unit: '' },
  airPressure: { label: 'Pressure of the air', minimum: 50e3, maximum: 110e3, unit: ' Pa' },
} as const

function refusedCondition(conditions: Conditions, bent: BentConditions): string | undefined {
  for (const [id, { label, minimum, maximum, unit }] of Object.entries(limits)) {
    const value = conditions[id as keyof typeof limits]
    if (!(value >= minimum && value <= maximum))
      return `${label}: ${value}${unit} is outside what the model covers; accepted: ${minimum} to ${maximum}${unit}`
  }
  const shares = {
    thinned: { label: 'Share of thinner fuel', maximum: 0.5 },
    water: { label: 'Share of water', maximum: 0.2 },
  } as const
  for (const [id, { label, maximum }] of Object.entries(shares)) {
    const value = bent[id as keyof typeof shares] ?? 0
    if (!(value >= 0 && value <= maximum))
      return `${label}: ${value} is out of range; accepted: 0 to ${maximum}`
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
  const wrong = refusedCondition(conditions, bent.conditions)
  if (wrong !== undefined) return refused(wrong)
  const read = parametersOf(model, bent.parameters)
  if (!read.ok) return read
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
  const { model, conditions, reference, parameters } = situation
  for (const [place, node] of model.nodes.entries()) {
    if (node.fixed === undefined) continue
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
