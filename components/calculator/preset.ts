import { getCollection } from 'astro:content'
import type { Calculator, FuelRecord } from '../../calculators/calculator/types.ts'
import { readingOf } from '../article/figures.ts'
import { setPointOf, type Plant } from '../content/load.ts'
import { textsFromFuel } from './starting.ts'

interface Given {
  readonly preset: Readonly<Record<string, string>> | undefined
  readonly fuel: string | undefined
  readonly setPoints: Readonly<Record<string, string>> | undefined
}

interface Preset {
  readonly texts: Record<string, string>
  /** Where the values come from, in words. */
  readonly origins: string[]
}

async function fuelRecord(id: string): Promise<FuelRecord & { readonly invented: boolean }> {
  const fuels = await getCollection('fuels')
  const entry = fuels.find((fuel) => fuel.id === id)
  if (entry === undefined) {
    throw new Error(
      `«${id}» is not an id of content/fuels; allowed: ${fuels.map((fuel) => fuel.id).join(', ')}`,
    )
  }
  const { data } = entry
  return {
    id,
    title: data.title,
    invented: data.invented,
    densityAt15: readingOf(data.densityAt15, 'density').si,
    viscosities: data.viscosities
      .map((pair) => ({
        temperature: readingOf(pair.temperature, 'temperature').si,
        kinematicViscosity: readingOf(pair.kinematicViscosity, 'kinematicViscosity').si,
      }))
      .sort((a, b) => a.temperature - b.temperature),
    cloudPoint: readingOf(data.cloudPoint, 'temperature').si,
  }
}

/** What an article asks a calculator to start with, the more particular over the more general. */
export async function presetOf(calculator: Calculator, { preset, fuel, setPoints }: Given): Promise<Preset> {
  const texts: Record<string, string> = {}
  const origins: string[] = []
  if (fuel !== undefined) {
    const record = await fuelRecord(fuel)
    Object.assign(texts, textsFromFuel(calculator, record))
    origins.push(`the data of ${record.title}${record.invented ? ' (an invented fuel)' : ''}`)
  }
  if (setPoints !== undefined) {
    const plants = new Map<string, Plant>()
    for (const [input, id] of Object.entries(setPoints)) {
      const { point, plant } = await setPointOf(id)
      texts[input] = point.value
      plants.set(plant.id, plant)
    }
    for (const { data } of plants.values()) {
      origins.push(`set points of ${data.title}${data.invented ? ' (an invented plant)' : ''}`)
    }
  }
  if (preset !== undefined) {
    Object.assign(texts, preset)
    origins.push('values chosen for this article')
  }
  return { texts, origins }
}
