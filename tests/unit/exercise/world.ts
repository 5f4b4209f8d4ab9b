import { readdirSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { shownBy } from '../../../calculators/exercise/show.ts'
import type { World } from '../../../calculators/exercise/course.ts'
import { solverOf } from '../../../components/circuit/bench/solver.ts'
import type { BenchData } from '../../../components/circuit/bench/types.ts'
import { severities, surroundingsOf } from '../../../components/exercise/surroundings.ts'
import { checks, states, type ExerciseData } from '../checks/content.ts'

const yaml = (path: string): unknown => parse(readFileSync(`content/${path}`, 'utf8'))
const folder = (name: string): Record<string, unknown>[] =>
  readdirSync(`content/${name}`).map((file) => ({
    id: file.replace('.yaml', ''),
    ...(yaml(`${name}/${file}`) as object),
  }))

const faults = folder('faults') as unknown as World['faults']

function benchData(id: string): BenchData {
  const circuit = yaml(`circuits/${id}.yaml`) as BenchData['circuit'] & { readonly plant: string }
  const { setPoints, title, invented } = yaml(`plants/${circuit.plant}.yaml`) as Pick<
    BenchData,
    'setPoints' | 'invented'
  > & { title: string }
  return {
    id,
    circuit,
    plant: title,
    invented,
    setPoints,
    fuels: folder('fuels') as unknown as BenchData['fuels'],
    faults: faults.filter(({ bends }) => bends[id] !== undefined) as unknown as BenchData['faults'],
    states: states as unknown as BenchData['states'],
    pages: {},
  }
}

const worlds = new Map<string, World>()

/** The plant of an exercise, from the same files that its page reads. */
export function worldOf({ circuit, conditions }: Pick<ExerciseData, 'circuit' | 'conditions'>): World {
  const key = JSON.stringify([circuit, conditions])
  const known = worlds.get(key)
  if (known) return known
  const data = benchData(circuit)
  const solve = solverOf(data)
  const surroundings = surroundingsOf(conditions)
  const world: World = {
    checks: checks.filter((check) => check.circuits.includes(circuit)),
    states,
    faults: data.faults,
    show: shownBy((state, at) => solve({ ...surroundings, state, faults: severities(at) })),
  }
  worlds.set(key, world)
  return world
}
