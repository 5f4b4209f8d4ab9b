import { expect, test } from 'vitest'
import { filterFlow, parallelDrop } from '../../../calculators/hydraulics/filter-parallel.ts'
import made from './parallel-filters.json' with { type: 'json' }

interface Case {
  readonly first: { readonly element: number; readonly housing: number }
  readonly second: { readonly element: number; readonly housing: number }
  readonly flow: number
  readonly viscosity: number
  readonly density: number
  readonly drop: number
}

const resistance = (pair: unknown) => {
  const [element = 0, housing = 0] = pair as number[]
  return { element, housing }
}

const cases = made.cases.map(([first, second, flow, viscosity, density, drop]): Case => ({
  first: resistance(first),
  second: resistance(second),
  flow: Number(flow),
  viscosity: Number(viscosity),
  density: Number(density),
  drop: Number(drop),
}))

test(`${cases.length} pairs of filters against ${made.source} ${made.version}, within 0.1 %`, () => {
  expect(cases.length).toBeGreaterThanOrEqual(1000)
  for (const { first, second, flow, viscosity, density, drop } of cases) {
    const found = parallelDrop(first, second, flow, viscosity, density)
    expect(Math.abs(found / drop - 1)).toBeLessThan(1e-8)
    const passed =
      filterFlow(first, found, viscosity, density) + filterFlow(second, found, viscosity, density)
    expect(Math.abs(passed / flow - 1)).toBeLessThan(1e-9)
  }
})
