import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { allFaults, allFuels, plantFile } from '../../../calculators/terminal/content.ts'
import type { BenchData, BenchFault, Setting } from '../../../components/circuit/bench/types.ts'
import { usualSetting } from '../../../components/circuit/bench/setting.ts'
import { circuits, type CircuitId } from '../circuit/circuits.ts'

const states: unknown = parse(readFileSync('content/checks/states.yaml', 'utf8'))

/** The data of a bench, out of the same files as the build's. */
export function benchData(id: CircuitId): BenchData {
  const circuit = circuits[id]
  const plant = plantFile(circuit.plant)
  const faults = allFaults().filter(
    (fault) => fault.bends[id] !== undefined,
  ) as unknown as readonly BenchFault[]
  return {
    id,
    circuit,
    plant: plant.title,
    invented: circuit.invented,
    setPoints: plant.setPoints,
    fuels: Object.entries(allFuels()).map(([fuel, data]) => ({ ...data, id: fuel })),
    states: states as BenchData['states'],
    faults: faults.map((fault) => ({ ...fault, alsoCalled: fault.alsoCalled ?? [] })),
    pages: {},
  }
}

export const pq12 = benchData('pq-12')

export const set = (setting: Partial<Setting>): Setting => ({ ...usualSetting(pq12), ...setting })

/** A preset as its file gives it. */
export const presetFile = (id: string): { circuit: CircuitId } =>
  parse(readFileSync(`content/benches/${id}.yaml`, 'utf8')) as { circuit: CircuitId }
