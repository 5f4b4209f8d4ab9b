import { describe, expect, test } from 'vitest'
import type { FaultData } from '../../../calculators/faults/types.ts'
import {
  bubblesOnlyRunning,
  bubblesPriming,
  circuitOf,
  faultOf,
  fuelFrom,
  hasBubbles,
  severities,
  type Seen,
} from './sweep.ts'

// The trade's rules of the two glasses (common practice, no published source) against the circuit model, with every
// fault by itself at every fifth of its size. Where the model and a rule part, the fault is named with its reason, as
// 'reading the two glasses' tells it; one that keeps to the rule again, or a new one that breaks it, fails.

const circuits = { 'pq-12': circuitOf('pq-12'), 'ps-6': circuitOf('ps-6') }
const pq12 = circuits['pq-12']
type CircuitId = keyof typeof circuits
const circuitIds = Object.keys(circuits) as CircuitId[]

/** Id of a fault to the reason why the rule does not hold for it. */
type Exceptions = Readonly<Record<string, string>>

/** Ids of the faults that show this at some severity, those left out to which the rule points. */
function breakers(
  id: CircuitId,
  shows: (views: readonly Seen[]) => boolean,
  pointedAt: (fault: FaultData) => boolean,
): string[] {
  const circuit = circuits[id]
  return circuit.faults
    .filter((fault) => !pointedAt(fault) && circuit.sweep(fault).some(shows))
    .map((fault) => fault.id)
}

const namesOf = (exceptions: Exceptions) => Object.keys(exceptions).sort()

describe.each(circuitIds)('%s: return glass full and clear in health', (id) => {
  test.each(circuits[id].seen([]))('$state', ({ returnGlass, bypassGlass }) => {
    expect(returnGlass).toMatchObject({ look: 'full and clear', gas: 0 })
    expect(bypassGlass?.words ?? 'empty').toBe('empty')
  })
})

describe('bubbles while priming point to the suction side', () => {
  const exceptions: Record<CircuitId, Exceptions> = {
    'pq-12': {
      'fuel-waxed': 'it is the fuel; wax plugs the strainer, and the vacuum behind it does the rest',
      'glass-gasket-draws-air': 'the return falls to the tank, so the glass itself is below the air',
    },
    'ps-6': {
      'fuel-waxed': 'as in the PQ-12',
      'glass-gasket-draws-air': 'as in the PQ-12',
    },
  }

  test.each(circuitIds)('%s: and to nothing else but these', (id) => {
    const found = breakers(id, bubblesPriming, circuits[id].onSuctionSide)
    expect(found.sort()).toEqual(namesOf(exceptions[id]))
  })

  test.each(circuitIds)('%s: whatever lets air into the suction side shows them at every size', (id) => {
    const letsIn = ['airHole', 'churnedAir', 'leakBack']
    const { faults, sweep, onSuctionSide } = circuits[id]
    const leaks = faults.filter(
      (fault) =>
        onSuctionSide(fault) &&
        fault.bends[id]?.some((bend) => 'parameter' in bend && letsIn.includes(bend.parameter)),
    )
    expect(leaks.length).toBeGreaterThanOrEqual(7)
    // At its full size the pipe stands in air, and there is no fuel left to bubble.
    const holds = (fault: FaultData) =>
      sweep(fault).every((views) => bubblesPriming(views) || views[0]?.returnGlass.look === 'empty')
    expect(leaks.filter((fault) => !holds(fault)).map((fault) => fault.id)).toEqual([])
  })

  test('a restriction there shows them late: the strainer plugged by half of its size shows a clear glass', () => {
    const views = pq12.sweep(faultOf('suction-strainer-plugged'))
    expect(views.map(bubblesPriming)).toEqual([false, false, false, true, true])
  })

  test('a foot valve that leaks back shows them while priming and clears with the engine running', () => {
    for (const id of circuitIds)
      for (const [priming, ...running] of circuits[id].sweep(faultOf('foot-valve-leaks-back'))) {
        expect(priming && hasBubbles(priming)).toBe(true)
        expect(running.filter(hasBubbles)).toEqual([])
      }
  })
})

describe('bubbles only with the engine running point to an injector', () => {
  const exceptions: Record<CircuitId, Exceptions> = {
    'pq-12': {
      'fuel-diluted': 'petrol boils out where warm fuel comes to the low pressure of the glass',
      'glass-gasket-draws-air': 'less fuel comes back at load, so the glass is further below the air',
      'tank-vent-blocked': 'only what is burnt makes room for the air that cannot come in',
    },
    'ps-6': {
      'fuel-waxed': 'its feed pump turns with the engine and draws more than the priming pump',
      'suction-line-restricted': 'as for waxed fuel',
      'suction-strainer-plugged': 'as for waxed fuel',
      'tank-vent-blocked': 'as in the PQ-12',
    },
  }
  const isInjector = ({ id }: FaultData) => id === 'injector-passes-gas'

  test.each(circuitIds)('%s: and to nothing else but these', (id) => {
    expect(breakers(id, bubblesOnlyRunning, isInjector).sort()).toEqual(namesOf(exceptions[id]))
  })

  test('an injector that passes gas never shows them while priming, and more the more load there is', () => {
    for (const views of pq12.sweep(faultOf('injector-passes-gas'))) {
      const gas = views.map(({ returnGlass }) => returnGlass.gas)
      expect(gas[0]).toBe(0)
      expect(gas).toEqual(gas.toSorted((one, other) => one - other))
      expect(new Set(gas).size).toBe(gas.length)
    }
  })

  test('the smallest leak is not seen at any load, the next at load only', () => {
    const shown = pq12
      .sweep(faultOf('injector-passes-gas'))
      .map((views) => views.filter(hasBubbles).map(({ state }) => state))
    expect(shown.slice(0, 3)).toEqual([[], ['part', 'full'], ['idle', 'part', 'full']])
  })

  test('hot fuel and a weak back-pressure valve show none by themselves', () => {
    for (const id of ['heater-stuck-on', 'return-valve-weak', 'return-valve-held-open'])
      expect(pq12.sweep(faultOf(id)).flat().filter(hasBubbles)).toEqual([])
  })
})

describe('fuel in the bypass glass with no bubbles points to secondaries, bypass valve or a restricted return', () => {
  const exceptions: Exceptions = {
    'bypass-drain-plugged': 'what the worn seat lets by gathers above the plugged drain',
    'heater-not-heating': 'thick fuel lifts a sound valve over sound filters',
    'wrong-grade-delivered': 'as for cold fuel: it is thick at the same temperature',
  }
  /** The return restricted before it meets the drain of the bypass glass: the fuel comes from above. */
  const beforeTheJoint: Exceptions = {
    'injector-return-filters-plugged': 'all injectors together pass less than the pump gives',
    'return-valve-set-high': 'the header stands higher, and the valve feels it',
    'return-valve-stuck-shut': 'as above',
  }
  const behindTheJoint = ['return-line-blocked', 'return-line-squeezed']
  const fuelSeen = (views: readonly Seen[]) => fuelFrom(views, 'valve') || fuelFrom(views, 'drain')
  const pointedAt = (fault: FaultData) =>
    ['secondary-filters', 'bypass-valve'].includes(pq12.placeOf(fault)) || pq12.onReturnSide(fault)

  test('and to nothing else but these', () => {
    expect(breakers('pq-12', fuelSeen, pointedAt).sort()).toEqual(namesOf(exceptions))
  })

  test.each([
    'secondary-filters-plugged',
    'wrong-secondary-elements',
    'bypass-valve-held-open',
    'bypass-valve-weak',
    'bypass-valve-wrong',
    ...Object.keys(beforeTheJoint),
    'heater-not-heating',
    'wrong-grade-delivered',
  ])('%s: from above, never from the drain', (id) => {
    const views = pq12.sweep(faultOf(id))
    expect(views.some((states) => fuelFrom(states, 'valve'))).toBe(true)
    expect(views.some((states) => fuelFrom(states, 'drain'))).toBe(false)
  })

  test.each([...behindTheJoint, 'bypass-drain-plugged'])('%s: from the drain, never from above', (id) => {
    const views = pq12.sweep(faultOf(id))
    expect(views.some((states) => fuelFrom(states, 'drain'))).toBe(true)
    expect(views.some((states) => fuelFrom(states, 'valve'))).toBe(false)
  })

  test('no other fault of the return side shows fuel there', () => {
    const shown = pq12.faults.filter((fault) => pq12.onReturnSide(fault) && pq12.sweep(fault).some(fuelSeen))
    expect(shown.map(({ id }) => id).sort()).toEqual(
      [...Object.keys(beforeTheJoint), ...behindTheJoint].sort(),
    )
  })

  test('one fault by itself never shows fuel in the bypass glass and bubbles in the return glass', () => {
    const both = pq12.faults.filter((fault) =>
      pq12.sweep(fault).some((views) => fuelSeen(views) && views.some(hasBubbles)),
    )
    expect(both.map(({ id }) => id)).toEqual([])
  })

  test('a valve that is screwed in keeps the glass empty over plugged secondaries', () => {
    const plugged = { fault: faultOf('secondary-filters-plugged'), severity: 0.8 }
    expect(fuelSeen(pq12.seen([plugged]))).toBe(true)
    expect(fuelSeen(pq12.seen([plugged, { fault: faultOf('bypass-valve-set-high'), severity: 1 }]))).toBe(
      false,
    )
  })
})

test('the sweep covers all sizes of every fault that the two circuits can have', () => {
  for (const id of circuitIds)
    for (const fault of circuits[id].faults) expect(circuits[id].sweep(fault)).toHaveLength(severities.length)
})
