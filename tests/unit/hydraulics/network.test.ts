import { describe, expect, test } from 'vitest'
import { checkValveLaw } from '../../../calculators/hydraulics/elements/check-valve.ts'
import { leakLaw } from '../../../calculators/hydraulics/elements/leak.ts'
import { pumpLaw } from '../../../calculators/hydraulics/elements/pump.ts'
import { twoTermLaw } from '../../../calculators/hydraulics/elements/two-terms.ts'
import { prepareNet, solveNet, type Law, type Net } from '../../../calculators/hydraulics/network/index.ts'

const link = (id: string, from: number, to: number, law: Law) => ({ id, from, to, law })

describe('refuses, with the name of the part', () => {
  const tank = { id: 'tank', pressure: 0 }
  test.each<[string, Net, RegExp]>([
    [
      'a part without a fixed pressure',
      {
        nodes: [tank, { id: 'a' }, { id: 'b' }, { id: 'c' }],
        links: [link('p', 0, 1, leakLaw(1)), link('q', 2, 3, leakLaw(1))],
      },
      /No fixed pressure reaches «b», «c»/,
    ],
    ['a node without links', { nodes: [tank, { id: 'lonely' }], links: [] }, /«lonely»/],
    ['an end that does not exist', { nodes: [tank], links: [link('p', 0, 1, leakLaw(1))] }, /«p», to: 1/],
    [
      'half a place',
      { nodes: [tank, { id: 'a' }], links: [link('p', 0.5, 1, leakLaw(1))] },
      /«p», from: 0\.5/,
    ],
    ['both ends at one node', { nodes: [tank], links: [link('p', 0, 0, leakLaw(1))] }, /«p».*«tank»/],
  ])('%s', (_, net, message) => {
    expect(() => prepareNet(net)).toThrow(message)
  })

  test.each([
    [{ pressures: [Number.NaN, 0] }, {}, /Pressure of node «tank»: NaN/],
    [{ outflows: [0, Infinity] }, {}, /Outflow of node «a»: Infinity/],
    [{}, { start: Float64Array.of(Number.NaN) }, /First flow of link «p»: NaN/],
  ])('values that are no numbers: %j', (values, options, message) => {
    const net = { nodes: [tank, { id: 'a' }], links: [link('p', 0, 1, leakLaw(1))] }
    expect(() => solveNet(prepareNet(net), values, options)).toThrow(message)
  })
})

describe('solves what can be worked by hand', () => {
  test('two equal leaks in series halve the pressure', () => {
    const net = {
      nodes: [{ id: 'a', pressure: 3e5 }, { id: 'm' }, { id: 'b', pressure: 1e5 }],
      links: [link('p', 0, 1, leakLaw(1e-9)), link('q', 1, 2, leakLaw(1e-9))],
    }
    const { pressures, flows, converged } = solveNet(prepareNet(net))
    expect(converged).toBe(true)
    expect(pressures[1]).toBeCloseTo(2e5, 6)
    expect([...flows]).toEqual([expect.closeTo(1e-4, 14), expect.closeTo(1e-4, 14)])
  })

  test('a balanced Wheatstone bridge passes nothing across', () => {
    const nodes = [{ id: 'high', pressure: 1e5 }, { id: 'left' }, { id: 'right' }, { id: 'low', pressure: 0 }]
    const arm = (share: number) => twoTermLaw(share * 1e8, share * 1e12)
    const links = [
      link('a', 0, 1, arm(1)),
      link('b', 1, 3, arm(2)),
      link('c', 0, 2, arm(1)),
      link('d', 2, 3, arm(2)),
      link('bridge', 1, 2, leakLaw(1e-7)),
    ]
    const { flows, converged } = solveNet(prepareNet({ nodes, links }))
    expect(converged).toBe(true)
    expect(Math.abs(flows[4] ?? Number.NaN)).toBeLessThan(1e-13)
  })

  test('a pump against a dead end rises until all slips back', () => {
    const fuel = { density: 840, kinematicViscosity: 3e-6 }
    const law = pumpLaw({ displacement: 1e-5, speed: 20 * Math.PI, slip: 1e-13, liquidShare: 1 }, fuel)
    const net = { nodes: [{ id: 'tank', pressure: 0 }, { id: 'end' }], links: [link('pump', 0, 1, law)] }
    expect(solveNet(prepareNet(net)).pressures[1]).toBeCloseTo((1e-4 * 840 * 3e-6) / 1e-13, 2)
  })

  test('what is taken out comes through the only pipe; given anew, the new value counts', () => {
    const net = {
      nodes: [
        { id: 'tank', pressure: 2e5 },
        { id: 'tap', outflow: 3e-4 },
      ],
      links: [link('p', 0, 1, twoTermLaw(1e7, 1e11))],
    }
    const prepared = prepareNet(net)
    expect(solveNet(prepared).pressures[1]).toBeCloseTo(2e5 - 3e3 - 9e3, 6)
    const values = { outflows: [0, 1e-4], pressures: [1e5, 0], laws: [twoTermLaw(1e8, 0)] }
    expect(solveNet(prepared, values).pressures[1]).toBeCloseTo(1e5 - 1e4, 6)
    expect(solveNet(prepared).flows[0]).toBeCloseTo(3e-4, 12)
  })

  test('a net of fixed nodes only', () => {
    const net = {
      nodes: [
        { id: 'a', pressure: 2e5 },
        { id: 'b', pressure: 1e5 },
      ],
      links: [link('p', 0, 1, twoTermLaw(0, 1e11)), link('q', 1, 0, leakLaw(1e-9))],
    }
    const { flows, converged } = solveNet(prepareNet(net))
    expect(converged).toBe(true)
    expect([...flows]).toEqual([expect.closeTo(1e-3, 11), expect.closeTo(-1e-4, 12)])
  })

  test('warm from its own solution it is done after one step', () => {
    const net = {
      nodes: [{ id: 'a', pressure: 3e5 }, { id: 'm' }, { id: 'b', pressure: 1e5 }],
      links: [link('p', 0, 1, twoTermLaw(1e7, 1e11)), link('q', 1, 2, twoTermLaw(1e6, 3e11))],
    }
    const prepared = prepareNet(net)
    const cold = solveNet(prepared)
    const warm = solveNet(prepared, {}, { start: cold.flows })
    expect(cold.iterations).toBeGreaterThan(1)
    expect(warm.iterations).toBe(1)
    expect(warm.pressures[1]).toBeCloseTo(cold.pressures[1] ?? Number.NaN, 4)
    const found = Array.from(cold.flows)
    const again = solveNet(prepared, {}, { start: cold.flows, into: cold })
    expect(again.flows).toBe(cold.flows)
    expect(again.pressures).toBe(cold.pressures)
    expect(again.iterations).toBe(1)
    for (const [place, flow] of found.entries()) expect(again.flows[place]).toBeCloseTo(flow, 12)
  })
})

describe('says when it has not converged, and where', () => {
  const check = checkValveLaw({ cracking: 1e4, linear: 1e6, quadratic: 1e11, leakage: 1e-16 })
  const net = {
    nodes: [{ id: 'a', pressure: 5e5 }, { id: 'm' }, { id: 'b', pressure: 0 }],
    links: [link('check', 0, 1, check), link('orifice', 1, 2, twoTermLaw(1e5, 1e13))],
  }

  test('starved of iterations', () => {
    const solution = solveNet(prepareNet(net), {}, { mostIterations: 1 })
    expect(solution.converged).toBe(false)
    expect(['check', 'orifice', 'm']).toContain(solution.worst)
    expect(solution.residual).toBeGreaterThan(1e-9)
    for (const value of [...solution.pressures, ...solution.flows]) expect(Number.isFinite(value)).toBe(true)
    expect(solveNet(prepareNet(net)).converged).toBe(true)
  })

  test('a law that gives no number', () => {
    const broken: Law = (_, into) => {
      into.drop = Number.NaN
      into.slope = 1e6
    }
    const solution = solveNet(prepareNet(net), { laws: [check, broken] })
    expect(solution).toMatchObject({ converged: false, worst: 'orifice' })
    for (const value of [...solution.pressures, ...solution.flows, solution.residual])
      expect(Number.isFinite(value)).toBe(true)
  })

  test('a law without a value far out is approached in shorter steps', () => {
    const short: Law = (flow, into) => {
      into.drop = Math.abs(flow) < 1e-3 ? 1e5 * flow + 1e12 * flow * Math.abs(flow) : Number.NaN
      into.slope = 1e5 + 2e12 * Math.abs(flow)
    }
    const solution = solveNet(prepareNet(net), { laws: [short, twoTermLaw(1e5, 1e12)] })
    expect(solution.converged).toBe(true)
    expect(solution.flows[0]).toBeCloseTo(5e-4, 6)
  })
})
