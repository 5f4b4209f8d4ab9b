import { oilEnergy } from '../../calculators/fuel/energy-content.ts'
import { carbonAromaticityIndex } from '../../calculators/fuel/ignition-residual.ts'
import {
  lineThroughPoints,
  viscosityOnLine,
  type ViscosityPoint,
} from '../../calculators/fuel/viscosity-walther.ts'
import { fuelDensity, specificHeat } from '../../calculators/heat/petroleum-heat.ts'
import { airSolubility } from '../../calculators/hydraulics/gas.ts'
import { readFigure } from '../../calculators/quantity/figure.ts'
import { formatNumber } from '../../calculators/quantity/format.ts'
import type { KindId } from '../../calculators/quantity/types.ts'
import { fromSI } from '../../calculators/quantity/units.ts'
import type { Cell, ReferenceTable, Row } from './types.ts'

/** A fuel as its file gives it. */
export interface TabledFuel {
  readonly title: string
  readonly densityAt15: string
  readonly viscosities: readonly { readonly temperature: string; readonly kinematicViscosity: string }[]
  readonly cloudPoint: string
}

const CELSIUS = 273.15
const TEMPERATURES = [-10, 0, 10, 20, 30, 40, 50, 60, 80, 100, 120, 140]

/** A line through two measured pairs is drawn no further than this beyond them. [K] Common practice. */
const FURTHEST = 60

/** Heavier than the heaviest distillate grade of ISO 8217: a residual fuel. [kg/m³] */
const RESIDUAL_FROM = 900

function si(text: string, kind: KindId): number {
  const reading = readFigure(text, kind)
  if (!reading.ok) throw new Error(`«${text}»: ${reading.reason}; allowed: ${reading.accepted}`)
  return reading.si
}

const written = (value: number, kind: KindId, unit: string, digits: number): Cell => ({
  figure: `${formatNumber(fromSI(value, unit, kind), digits).replace('−', '-')} ${unit}`,
  kind,
})

function pointsOf({ viscosities }: TabledFuel): ViscosityPoint[] {
  return viscosities.map(({ temperature, kinematicViscosity }) => ({
    temperature: si(temperature, 'temperature'),
    kinematicViscosity: si(kinematicViscosity, 'kinematicViscosity'),
  }))
}

function viscosityAt(fuel: TabledFuel, temperature: number): Cell {
  const points = pointsOf(fuel)
  const [first, last] = [points[0], points.at(-1)]
  if (!first || !last) return ''
  const near = temperature >= first.temperature - FURTHEST && temperature <= last.temperature + FURTHEST
  if (!near || temperature < si(fuel.cloudPoint, 'temperature')) return ''
  const viscosity = viscosityOnLine(lineThroughPoints(first, last), temperature)
  return written(viscosity, 'kinematicViscosity', 'mm2/s', 3)
}

/** The lightest first, as they stand on a chart. */
const byDensity = (fuels: readonly TabledFuel[]) =>
  fuels.toSorted((one, other) => si(one.densityAt15, 'density') - si(other.densityAt15, 'density'))

/** Viscosity of the handbook's fuels from cold to hot, each by the line through its outermost pairs. */
export function fuelViscosities(given: readonly TabledFuel[]): ReferenceTable {
  const fuels = byDensity(given)
  return {
    id: 'viscosities',
    title: 'Viscosity from cold to hot',
    caption: 'Kinematic viscosity of the fuels of this handbook, by the line through their measured pairs.',
    invented: true,
    head: 'Temperature',
    columns: fuels.map(({ title }) => title),
    rows: TEMPERATURES.map((degrees) => ({
      name: '',
      at: `${degrees} degC`,
      cells: fuels.map((fuel) => viscosityAt(fuel, degrees + CELSIUS)),
      origin: { source: 'astm-d341' },
    })),
    notes: [
      'Nothing stands below the cloud point of a fuel, or in its place the pour point of a black one: wax makes it another liquid. Nothing stands far beyond the measured pairs either.',
      'A certificate of your own fuel goes before any table.',
    ],
  }
}

/** Properties that follow from a fuel's density and viscosity, each by the method that the calculators use. */
export function fuelProperties(given: readonly TabledFuel[]): ReferenceTable {
  const fuels = byDensity(given)
  const density = (fuel: TabledFuel) => si(fuel.densityAt15, 'density')
  const isResidual = (fuel: TabledFuel) => density(fuel) > RESIDUAL_FROM
  const net = (fuel: TabledFuel) =>
    oilEnergy('net', isResidual(fuel) ? 'residual' : 'distillate', density(fuel))
  const forty = 40 + CELSIUS
  const row = (name: string, cellOf: (fuel: TabledFuel) => Cell, rest: Omit<Row, 'name' | 'cells'>): Row => ({
    name,
    cells: fuels.map(cellOf),
    ...rest,
  })
  return {
    id: 'properties',
    title: 'Typical properties',
    caption: 'Properties of the fuels of this handbook: two that were chosen, and what follows from them.',
    invented: true,
    head: 'Property',
    columns: fuels.map(({ title }) => title),
    rows: [
      row('Density', (fuel) => ({ figure: fuel.densityAt15, kind: 'density' }), {
        at: '15 degC',
        origin: { chosen: true },
      }),
      row('Density', (fuel) => written(fuelDensity(density(fuel), forty), 'density', 'kg/m3', 4), {
        at: '40 degC',
        origin: { source: 'astm-d1250' },
      }),
      row(
        'Cloud point; of a residual fuel its pour point',
        (fuel) => ({ figure: fuel.cloudPoint, kind: 'temperature' }),
        {
          origin: { chosen: true },
        },
      ),
      row(
        'Specific heat',
        (fuel) => written(specificHeat(density(fuel), forty), 'specificHeat', 'kJ/(kg.K)', 3),
        {
          at: '40 degC',
          origin: { source: 'nbs-mp97', memory: true },
        },
      ),
      row(
        'Net energy by mass, free of water and ash',
        (fuel) => written(net(fuel), 'specificEnergy', 'MJ/kg', 3),
        {
          origin: { source: 'iso-8217', memory: true },
        },
      ),
      row('Net energy by volume', (fuel) => written(net(fuel) * density(fuel), 'energyDensity', 'MJ/L', 3), {
        at: '15 degC',
        origin: { source: 'iso-8217', memory: true },
      }),
      row(
        'Air dissolved, volume in a volume of fuel',
        (fuel) => (isResidual(fuel) ? '' : written(airSolubility(293.15, density(fuel)), 'ratio', '%', 2)),
        { at: '20 degC', origin: { source: 'astm-d2779', memory: true } },
      ),
      row(
        'Carbon aromaticity index (CCAI)',
        (fuel) => {
          const [first] = pointsOf(fuel)
          if (!first || !isResidual(fuel)) return ''
          return formatNumber(
            carbonAromaticityIndex(density(fuel), first.kinematicViscosity, first.temperature),
            3,
          )
        },
        { origin: { source: 'iso-8217' } },
      ),
    ],
    notes: [
      'Sulfur, water and ash take from the energy; the calculator of energy content counts them.',
      'The index is for residual fuels, the solubility of air for fuels up to the density of its method.',
    ],
  }
}
