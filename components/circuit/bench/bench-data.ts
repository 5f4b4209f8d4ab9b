import { getCollection } from 'astro:content'
import { allPages } from '../../content/directory.ts'
import { entryOf } from '../../content/load.ts'
import { circuitOf } from '../load-circuit.ts'
import type { BenchData } from './types.ts'

/** Gathers at build time what a bench needs of a circuit of content/circuits. */
export async function benchDataOf(id: string): Promise<BenchData> {
  const { data } = await circuitOf(id)
  const plant = await entryOf('plants', data.plant)
  const faults = (await getCollection('faults'))
    .filter((fault) => fault.data.bends[id] !== undefined)
    .map((fault) => {
      const { title, alsoCalled, description, frequency, bends } = fault.data
      const own = bends[id] ?? []
      const procedure = fault.data.procedureIn[id] ?? fault.data.procedure
      return { id: fault.id, title, alsoCalled, description, frequency, procedure, bends: { [id]: own } }
    })
  const fuels = (await getCollection('fuels')).map(({ id: fuel, data: figures }) => {
    const { title, densityAt15, viscosities, cloudPoint } = figures
    return { id: fuel, title, densityAt15, viscosities, cloudPoint }
  })
  const named = new Set(
    data.elements.flatMap(({ article, procedure }) => [article, procedure && `procedures/${procedure}`]),
  )
  const pages = (await allPages())
    .map(({ path, title }): [string, string] => [path.replaceAll(/^\/|\/$/g, ''), title])
    .filter(([path]) => named.has(path))
  const states = (await getCollection('checkStates')).map(({ id: state, data: { title, words } }) => [
    state,
    { title, words },
  ])
  const setPoints = Object.fromEntries(
    Object.entries(plant.data.setPoints).map(([name, { kind, value }]) => [name, { kind, value }]),
  )
  return {
    id,
    circuit: data,
    plant: plant.data.title,
    invented: data.invented,
    setPoints,
    fuels,
    faults,
    states: Object.fromEntries(states) as BenchData['states'],
    pages: Object.fromEntries(pages),
  }
}
