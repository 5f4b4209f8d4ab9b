import type { PartKindId } from '../../calculators/circuit/part-kinds.ts'
import { readFigure } from '../../calculators/quantity/figure.ts'
import { idsOfFolder, keysIn, rawCircuit } from './ids.ts'

/** What a claim about a circuit can speak of. */
export interface ClaimScope {
  readonly readings: readonly string[]
  readonly glasses: readonly string[]
  readonly parts: readonly string[]
  readonly fuels: readonly string[]
  /** Lowest and highest that the bench can be set to. [K] */
  readonly tankTemperature: readonly [number, number]
  readonly ambientTemperature: readonly [number, number]
  /** Why the circuit cannot have this fault, with what is allowed; nothing where it can. */
  readonly faultProblem: (id: string) => string | undefined
}

const gauges: ReadonlySet<PartKindId> = new Set([
  'pressure-gauge',
  'vacuum-gauge',
  'drop-gauge',
  'thermometer',
  'viscometer',
])

function bendsOf(fault: string): readonly string[] | undefined {
  return idsOfFolder('faults').includes(fault) ? keysIn(`faults/${fault}.yaml`, 'bends') : undefined
}

function scopeOf(circuit: string): ClaimScope {
  const { elements, fuels, ranges } = rawCircuit(circuit)
  const ofKinds = (isOne: (kind: PartKindId) => boolean) =>
    elements.filter(({ model }) => isOne(model.kind)).map(({ id }) => id)
  const cylinders = elements.find(({ model }) => model.kind === 'injectors')?.count ?? 0
  const kelvins = (text: string): number => {
    const reading = readFigure(text, 'temperature')
    return reading.ok ? reading.si : Number.NaN
  }
  const here = () => idsOfFolder('faults').filter((id) => bendsOf(id)?.includes(circuit))
  return {
    readings: [
      ...ofKinds((kind) => gauges.has(kind)),
      'return-flow',
      'rack',
      'power',
      ...Array.from({ length: cylinders }, (_, place) => `exhaust-${place + 1}`),
    ],
    glasses: ofKinds((kind) => kind === 'glass'),
    parts: elements.map(({ id }) => id),
    fuels,
    tankTemperature: [kelvins(ranges.tankTemperature[0]), kelvins(ranges.tankTemperature[1])],
    ambientTemperature: [kelvins(ranges.ambientTemperature[0]), kelvins(ranges.ambientTemperature[1])],
    faultProblem: (id) =>
      bendsOf(id)?.includes(circuit)
        ? undefined
        : `«${id}» is no fault of ${circuit}; allowed: ${here().join(', ')}`,
  }
}

/** Scopes of the circuits, each read once; nothing for one that there is not. */
export function claimScopes(): (circuit: string) => ClaimScope | undefined {
  const circuits = idsOfFolder('circuits')
  const read = new Map<string, ClaimScope>()
  return (circuit) => {
    if (!circuits.includes(circuit)) return undefined
    const scope = read.get(circuit) ?? scopeOf(circuit)
    read.set(circuit, scope)
    return scope
  }
}
