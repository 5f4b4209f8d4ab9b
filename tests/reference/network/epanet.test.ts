// Flows and pressures of whole networks against EPANET 2.3, the public solver for water networks, through epanet-js.
// Both use the same laws: Darcy and Weisbach with the factor of Swamee and Jain, laminar below Re 2000, and one and the
// same cubic between. What differs: EPANET converts to feet, takes g as 32.2 ft/s², stops when the sum of the changes
// of flow is 1e-5 of the sum of flows, draws straight lines between the points of a curve, and its
// pressure-sustaining valve holds a pressure exactly.
import { afterAll, describe, expect, test } from 'vitest'
import { prepareNet, solveNet } from '../../../calculators/hydraulics/network/index.ts'
import { netOf } from './case.ts'
import { FINEST_ACCURACY, solveByEngine } from './engine.ts'
import { NETWORKS } from './networks.ts'

const ALLOWED = 5e-3

/** Flows below this share of the largest, and pressures below this share of the span, are compared with the share. */
const SMALL_FLOW = 0.01
const SMALL_PRESSURE = 0.05

const worst: string[] = []
afterAll(() => console.log(['Worst deviation from EPANET', ...worst].join('\n')))

test('at least sixteen networks', () => {
  expect(NETWORKS.length).toBeGreaterThanOrEqual(16)
})

describe.each(NETWORKS)('$name', (network) => {
  test('flows and pressures within 0.5 % of EPANET', async () => {
    const net = netOf(network)
    const ours = solveNet(prepareNet(net))
    expect(ours.converged).toBe(true)
    const theirs = await solveByEngine(network)
    expect(theirs.relativeError).toBeLessThan(FINEST_ACCURACY)

    const flowOf = new Map(net.links.map(({ id }, i) => [id, ours.flows[i] ?? Number.NaN]))
    const pressureOf = new Map(net.nodes.map(({ id }, i) => [id, ours.pressures[i] ?? Number.NaN]))
    const leastFlow = SMALL_FLOW * Math.max(...[...theirs.flows.values()].map(Math.abs))
    const pressures = [...theirs.pressures.values()]
    const leastPressure = SMALL_PRESSURE * (Math.max(...pressures) - Math.min(...pressures))
    let [flowOff, pressureOff] = [0, 0]
    for (const [id, flow] of theirs.flows) {
      const off = Math.abs((flowOf.get(id) ?? Number.NaN) - flow) / Math.max(Math.abs(flow), leastFlow)
      flowOff = Math.max(flowOff, off)
    }
    for (const [id, pressure] of theirs.pressures) {
      const off = Math.abs((pressureOf.get(id) ?? Number.NaN) - pressure)
      pressureOff = Math.max(pressureOff, off / Math.max(Math.abs(pressure), leastPressure))
    }
    worst.push(
      `${network.name.padEnd(66)} flow ${(100 * flowOff).toFixed(4)} %   pressure ${(100 * pressureOff).toFixed(4)} %`,
    )
    expect(flowOff).toBeLessThan(ALLOWED)
    expect(pressureOff).toBeLessThan(ALLOWED)
  })
})
