import { getCollection } from 'astro:content'
import type { computedTables } from '../content/schema-table.ts'
import { fuelProperties, fuelViscosities } from './fuel-tables.ts'
import { gaugesTable, type TabledCircuit } from './gauge-table.ts'
import { pressuresTable, unitsTable } from './quantity-tables.ts'
import { cleanlinessCodes, viscosityScales } from './scale-tables.ts'
import type { ReferenceTable } from './types.ts'

type ComputedId = (typeof computedTables)[number]

const fuels = async () => (await getCollection('fuels')).map(({ data }) => data)

async function circuits(): Promise<TabledCircuit[]> {
  const plants = await getCollection('plants')
  return (await getCollection('circuits')).map(({ data }) => ({
    ...data,
    setPoints: plants.find(({ id }) => id === data.plant)?.data.setPoints ?? {},
  }))
}

const makers: Readonly<Record<ComputedId, () => ReferenceTable | Promise<ReferenceTable>>> = {
  'cleanliness-codes': cleanlinessCodes,
  units: unitsTable,
  pressures: pressuresTable,
  'fuel-viscosities': async () => fuelViscosities(await fuels()),
  'fuel-properties': async () => fuelProperties(await fuels()),
  'viscosity-scales': viscosityScales,
  gauges: async () => gaugesTable(await circuits()),
}

/** A table that is worked out from data, and never typed. */
export const computedTable = async (id: ComputedId): Promise<ReferenceTable> => makers[id]()
