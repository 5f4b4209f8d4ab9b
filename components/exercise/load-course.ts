import { getCollection, type CollectionEntry } from 'astro:content'
import { solveCircuit } from '../../calculators/circuit/solve-circuit.ts'
import { readCircuit } from '../../calculators/circuit/read-model.ts'
import type { CircuitModel } from '../../calculators/circuit/model.ts'
import { bentBy } from '../../calculators/faults/bend.ts'
import type { FaultData } from '../../calculators/faults/types.ts'
import { prepareCourse, type World } from '../../calculators/exercise/course.ts'
import { shownBy } from '../../calculators/exercise/show.ts'
import { readingOf } from '../article/figures.ts'
import { circuitOf } from '../circuit/load-circuit.ts'
import { entryOf } from '../content/load.ts'
import { packCourse, type Cause, type CourseData } from './course-data.ts'
import { checksOn, faultsOf, procedureLink } from './load-exercise.ts'
import type { ExerciseProps } from './types.ts'

type ExerciseEntry = CollectionEntry<'exercises'>

const models = new Map<string, CircuitModel>()

/** The model of a circuit, read once a build. A circuit that cannot be read stops the build. */
async function modelOf(id: string): Promise<CircuitModel> {
  const known = models.get(id)
  if (known) return known
  const circuit = await circuitOf(id)
  const plant = await entryOf('plants', circuit.data.plant)
  const fuels = Object.fromEntries((await getCollection('fuels')).map((fuel) => [fuel.id, fuel.data]))
  const read = readCircuit({ circuit: circuit.data, setPoints: plant.data.setPoints, fuels })
  if (!read.ok) throw new Error(read.problems.map(({ path, message }) => `${path.join('.')}: ${message}`).join('\n'))
  models.set(id, read.model)
  return read.model
}

/** Solved states by circuit and conditions: exercises in the same conditions share them. */
const shown = new Map<string, World['show']>()

async function showOf({ data }: ExerciseEntry, faults: readonly FaultData[]): Promise<World['show']> {
  const key = JSON.stringify([data.circuit, data.conditions])
  const known = shown.get(key)
  if (known) return known
  const model = await modelOf(data.circuit)
  const { fuel, tankTemperature, ambientTemperature, tankLevel, airPressure } = data.conditions
  const conditions = {
    fuel,
    tankTemperature: readingOf(tankTemperature, 'temperature').si,
    ambientTemperature: readingOf(ambientTemperature, 'temperature').si,
    tankLevel: readingOf(tankLevel, 'ratio').si,
    airPressure: readingOf(airPressure, 'absolutePressure').si,
  }
  const show = shownBy((state, at, near) =>
    solveCircuit(model, { ...conditions, state }, bentBy(model, data.circuit, faults, at, conditions as any), near),
  )
  shown.set(key, show)
  return show
}

/** The hidden causes as the page tells them at the end. */
function causesOf({ data }: ExerciseEntry): Promise<Cause[]> {
  return Promise.all(
    data.faults.map(async ({ fault: id, severity }) => {
      const { title, description, confirm, procedure } = (await entryOf('faults', id)).data
      return { id, title, description, confirm, severity, procedure: await procedureLink(procedure) }
    }),
  )
}

/** What a page carries of an exercise's course, reckoned by the model at build time. */
export async function loadCourse(entry: ExerciseEntry, { stateMinutes }: ExerciseProps): Promise<CourseData> {
  const { circuit, start, told, faults: hidden } = entry.data
  const faults = (await faultsOf(circuit)).map(({ id, data }) => ({ ...data, id }))
  const checks = (await checksOn(circuit)).map(({ id, data }) => ({ ...data, id }))
  const world = { checks, states: stateMinutes, faults, show: await showOf(entry, faults) }
  return packCourse(prepareCourse({ start, hidden, told }, world), told, await causesOf(entry))
}
