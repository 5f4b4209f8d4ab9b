import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { describe, expect, it } from 'vitest'
import { readFigure } from '../../../calculators/quantity/figure.ts'
import type { KindId } from '../../../calculators/quantity/types.ts'
import { plant as plantSchema } from '../../../components/content/schemas.ts'
import { circuitIds, circuits } from './circuits.ts'

const plantOf = (id: string) =>
  plantSchema.parse(parse(readFileSync(`content/plants/${circuits[id as 'pq-12'].plant}.yaml`, 'utf8')))

/** The parts by the ids that faults, presets and articles use. */
const parts: Record<string, string> = {
  'pq-12': `tank foot-valve suction-strainer supply-pump pump-motor pump-relief-valve fuel-heater primary-filter
    secondary-filters bypass-valve bypass-glass supply-header injectors return-header back-pressure-valve return-glass
    return-line suction-vacuum-gauge primary-drop-gauge secondary-drop-gauge header-gauge header-temperature`,
  'ps-6': `tank foot-valve suction-strainer feed-pump feed-check priming-pump priming-motor priming-check
    pump-relief-valve fuel-filters supply-gallery injection-pumps return-gallery overflow-valve return-glass return-line
    suction-vacuum-gauge filter-drop-gauge gallery-gauge gallery-temperature`,
  'pb-8': `tank suction-strainer feed-pump feed-motor feed-pressure-valve feed-filter mixing-column booster-pump
    booster-motor booster-relief-valve final-heater fine-filter supply-header injection-pumps return-header
    back-pressure-valve return-glass return-line suction-vacuum-gauge feed-gauge fine-filter-drop-gauge header-gauge
    header-temperature viscosity-gauge`,
}
const pipes: Record<string, string> = {
  'pq-12': `suction-pipe pump-suction-pipe heater-pipe primary-pipe secondary-pipe header-pipe relief-pipe bypass-pipe
    bypass-drain return-pipe`,
  'ps-6': 'suction-pipe pump-suction-pipe filter-pipe gallery-pipe return-pipe relief-pipe',
  'pb-8': `suction-pipe feed-pipe booster-suction-pipe booster-relief-pipe heater-pipe header-pipe return-pipe
    feed-return-pipe`,
}
const words = (list: string | undefined): string[] => (list ?? '').trim().split(/\s+/)

describe.each(circuitIds)('the data of %s', (id) => {
  const { [id]: circuit } = circuits
  const plant = plantOf(id)

  it('holds the parts and pipes by the ids that faults and articles use', () => {
    expect(circuit.elements.map((element) => element.id)).toEqual(words(parts[id]))
    const named = circuit.connections.flatMap(({ pipe }) => (pipe ? [pipe.id] : []))
    expect(named.toSorted()).toEqual(words(pipes[id]).toSorted())
  })

  it('types no figure into its words', () => {
    const typed = circuit.elements.filter(({ purpose, inHealth }) => /\d/.test(`${purpose} ${inHealth}`))
    expect(typed.map((element) => element.id)).toEqual([])
  })

  it('takes from its plant every figure of a part that a reader meets', () => {
    const given = circuit.elements.flatMap(({ id: part, model }) =>
      Object.entries(model).flatMap(([name, text]) =>
        name === 'kind' || Object.hasOwn(plant.setPoints, text) ? [] : [`${part}.${name}`],
      ),
    )
    // What no reader meets: bores, lengths, ranges of gauges, and what goes with the kind of part.
    const own = /\.(bore|length|losses|mouth|ventBore|range|inertialShare|elements|primingOnly|coolsToo)$/
    expect(given.filter((name) => !own.test(name))).toEqual([])
  })

  it('rests on a plant of the same name, which says of each set point how it was chosen', () => {
    expect(circuit.plant).toBe(id)
    expect(plant.circuit).toBe(id)
    for (const point of Object.values(plant.setPoints)) expect(point.chosen.length).toBeGreaterThan(8)
  })
})

describe('the figures hang together', () => {
  const si = (id: string, point: string): number => {
    const { kind, value } = plantOf(id).setPoints[point] ?? { kind: 'ratio' as KindId, value: '' }
    const reading = readFigure(value, kind)
    if (!reading.ok) throw new Error(`${point} of ${id}: ${value}`)
    return reading.si
  }
  const height = (id: 'pq-12', part: string): number => {
    const text = circuits[id].elements.find((element) => element.id === part)?.height ?? ''
    const reading = readFigure(text, 'length')
    return reading.ok ? reading.si : Number.NaN
  }

  it.each([
    ['pq-12', 'pump-displacement', 'pump-speed', 'pump-slip', 'pump-delivery'],
    ['pb-8', 'feed-pump-displacement', 'feed-pump-speed', 'feed-pump-slip', 'feed-pump-delivery'],
    ['pb-8', 'booster-pump-displacement', 'booster-pump-speed', 'booster-pump-slip', 'booster-pump-delivery'],
  ])(
    '%s: displacement and speed less slip make the delivery (%s)',
    (id, displacement, speed, slip, delivery) => {
      const displaced = (si(id, displacement) * si(id, speed)) / (2 * Math.PI)
      expect((displaced * (1 - si(id, slip))) / si(id, delivery)).toBeCloseTo(1, 2)
    },
  )

  it('PS-6: the feed pump makes its delivery at rated speed', () => {
    const speed = si('ps-6', 'rated-speed') * si('ps-6', 'feed-pump-ratio')
    const displaced = (si('ps-6', 'feed-pump-displacement') * speed) / (2 * Math.PI)
    expect((displaced * (1 - si('ps-6', 'feed-pump-slip'))) / si('ps-6', 'feed-pump-delivery')).toBeCloseTo(
      1,
      2,
    )
  })

  it.each([
    ['pq-12', 'pump-delivery'],
    ['ps-6', 'feed-pump-delivery'],
    ['pb-8', 'booster-pump-delivery'],
  ])('%s: what is not burnt at full load returns', (id, delivery) => {
    const returned = si(id, delivery) - si(id, 'fuel-burnt-at-full-load')
    expect(returned / si(id, 'return-flow-at-full-load')).toBeCloseTo(1, 2)
  })

  it.each([
    ['pq-12', 845],
    ['ps-6', 845],
    ['pb-8', 901],
  ])('%s: rated power at the specific consumption burns what is said', (id, density) => {
    const burnt = (si(id, 'rated-power') * si(id, 'specific-consumption')) / density
    expect(burnt / si(id, 'fuel-burnt-at-full-load')).toBeCloseTo(1, 1)
  })

  it('PQ-12: heights agree with the set points that state a difference of heights', () => {
    expect(height('pq-12', 'header-gauge') - height('pq-12', 'back-pressure-valve')).toBeCloseTo(
      si('pq-12', 'gauge-above-valve'),
    )
    const low = si('pq-12', 'fuel-reserve') * si('pq-12', 'tank-depth')
    expect(height('pq-12', 'supply-pump') - low).toBeCloseTo(si('pq-12', 'suction-lift'), 1)
    expect(si('pq-12', 'tank-volume')).toBeCloseTo(
      si('pq-12', 'tank-length') * si('pq-12', 'tank-width') * si('pq-12', 'tank-depth'),
      1,
    )
  })
})
