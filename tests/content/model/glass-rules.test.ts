import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { FaultData } from '../../../calculators/faults/types.ts'
import { tagsOf } from '../../../components/content/mdx-pages.ts'
import { entriesOf, type Symptom } from '../pages/content.ts'
import {
  bubblesOnlyRunning,
  bubblesPriming,
  circuitOf,
  faultOf,
  fuelFrom,
  hasBubbles,
  type Seen,
} from './sweep.ts'

// The trade's rules of the two glasses (common practice, no published source) against the circuit model, with every
// fault by itself at every fifth of its size. Where the model and a rule part, the fault is named with its reason, as
// 'reading the two glasses' tells it; one that keeps to the rule again, or a new one that breaks it, fails.

const circuits = { 'pq-12': circuitOf('pq-12'), 'ps-6': circuitOf('ps-6') }
const booster = circuitOf('pb-8')
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

describe.each([...Object.values(circuits), booster])(
  '$id: return glass full and clear in health',
  (circuit) => {
    test.each(circuit.seen([]))('$state', ({ returnGlass, bypassGlass }) => {
      expect(returnGlass).toMatchObject({ look: 'full and clear', gas: 0 })
      expect(bypassGlass?.words ?? 'empty').toBe('empty')
    })
  },
)

const primingExceptions: Record<CircuitId, Exceptions> = {
  'pq-12': {
    'fuel-waxed': 'it is the fuel; wax plugs the strainer, and the vacuum behind it does the rest',
    'glass-gasket-draws-air': 'the return falls to the tank, so the glass itself is below the air',
  },
  'ps-6': {
    'fuel-waxed': 'as in the PQ-12',
    'glass-gasket-draws-air': 'as in the PQ-12',
  },
}

describe('bubbles while priming point to the suction side', () => {
  test.each(circuitIds)('%s: and to nothing else but these', (id) => {
    const found = breakers(id, bubblesPriming, circuits[id].onSuctionSide)
    expect(found.sort()).toEqual(namesOf(primingExceptions[id]))
  })

  test.each(circuitIds)('%s: whatever lets air into the suction side shows them at every size', (id) => {
    const letsIn = new Set(['airHole', 'churnedAir', 'leakBack'])
    const { faults, sweep, onSuctionSide } = circuits[id]
    const leaks = faults.filter(
      (fault) =>
        onSuctionSide(fault) &&
        fault.bends[id]?.some((bend) => 'parameter' in bend && letsIn.has(bend.parameter)),
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

const runningExceptions: Record<CircuitId, Exceptions> = {
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

describe('bubbles only with the engine running point to an injector', () => {
  const isInjector = ({ id }: FaultData) => id === 'injector-passes-gas'

  test('injection pumps between the cylinders and the circuit: the PS-6 has no such injector', () => {
    expect(circuits['ps-6'].faults.filter(isInjector)).toEqual([])
  })

  test.each(circuitIds)('%s: and to nothing else but these', (id) => {
    expect(breakers(id, bubblesOnlyRunning, isInjector).sort()).toEqual(namesOf(runningExceptions[id]))
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

const bypassExceptions: Exceptions = {
  'bypass-drain-plugged': 'what the worn seat lets by gathers above the plugged drain',
  'heater-not-heating': 'thick fuel lifts a sound valve over sound filters',
  'wrong-grade-delivered': 'as for cold fuel: it is thick at the same temperature',
}

describe('fuel in the bypass glass with no bubbles points to secondaries, bypass valve or a restricted return', () => {
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
    expect(breakers('pq-12', fuelSeen, pointedAt).sort()).toEqual(namesOf(bypassExceptions))
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

  test('a squeezed return line never opens the valve; with plugged secondaries fuel falls into a held-up drain', () => {
    const squeezed = { fault: faultOf('return-line-squeezed'), severity: 1 }
    const plugged = { fault: faultOf('secondary-filters-plugged'), severity: 1 }
    const words = pq12.seen([squeezed, plugged]).map(({ bypassGlass }) => bypassGlass?.words)
    expect(new Set(words)).toEqual(new Set(['full, running from above into a drain that is held up']))
  })

  test('load hides a small restriction of the return line', () => {
    const smallest = pq12.sweep(faultOf('return-line-squeezed')).find((views) => fuelFrom(views, 'drain'))
    expect(smallest?.[0]?.bypassGlass?.from).toBe('drain')
    expect(smallest?.at(-1)?.bypassGlass?.from).toBe('none')
  })
})

describe('what the pages say of it', () => {
  /** Causes of a symptom page that the model does not show as the page does; the page says so and why. */
  test.each([
    ['bubbles-when-priming', bubblesPriming, ['tank-vent-blocked']],
    [
      'bubbles-only-when-running',
      bubblesOnlyRunning,
      ['return-valve-weak', 'suction-pipe-uncovered', 'suction-union-draws-air'],
    ],
    ['fuel-in-the-bypass-glass', (views) => fuelFrom(views, 'valve'), ['return-line-squeezed']],
    ['bypass-glass-rising-from-its-drain', (views) => fuelFrom(views, 'drain'), []],
  ] satisfies [string, (views: readonly Seen[]) => boolean, string[]][])(
    '%s: its causes show it',
    (page, shows, notShown) => {
      const { data } = entriesOf<Symptom>('symptoms').find(({ id }) => id === page) ?? {}
      const causes = data?.causes.map(({ fault }) => fault) ?? []
      expect(causes.length).toBeGreaterThan(2)
      expect(causes.filter((id) => !pq12.sweep(faultOf(id)).some(shows)).sort()).toEqual(notShown)
    },
  )

  test('the article shows every exception that stands here', () => {
    const text = readFileSync('content/circuit/reading-the-two-glasses.mdx', 'utf8')
    const [, ends = ''] = text.split('## Where the rules end')
    const shownFor = (id: CircuitId) =>
      tagsOf(ends)
        .filter(({ name, attributes }) => name === 'GlassSigns' && (attributes['circuit'] ?? 'pq-12') === id)
        .flatMap(({ attributes }) => [...(attributes['of'] ?? '').matchAll(/'([^']+)'/g)])
        .map((found) => found[1])
    expect(shownFor('pq-12')).toEqual(
      expect.arrayContaining([
        ...namesOf(primingExceptions['pq-12']),
        ...namesOf(runningExceptions['pq-12']),
        ...namesOf(bypassExceptions),
      ]),
    )
    expect(shownFor('ps-6')).toEqual(
      expect.arrayContaining([...namesOf(primingExceptions['ps-6']), ...namesOf(runningExceptions['ps-6'])]),
    )
  })

  test('«more than a third of the PQ-12’s list shows in neither glass», and these among them', () => {
    const health = pq12
      .seen([])
      .map(({ returnGlass, bypassGlass }) => [returnGlass.words, bypassGlass?.words])
    const unseen = pq12.faults
      .filter((fault) =>
        pq12
          .sweep(fault)
          .every((views) =>
            views.every(
              ({ returnGlass, bypassGlass }, place) =>
                returnGlass.words === health[place]?.[0] && bypassGlass?.words === health[place]?.[1],
            ),
          ),
      )
      .map(({ id }) => id)
    expect(unseen.length / pq12.faults.length).toBeGreaterThan(1 / 3)
    expect(unseen.length / pq12.faults.length).toBeLessThan(1 / 2)
    expect(unseen).toEqual(
      expect.arrayContaining([
        'plunger-worn',
        'cylinder-inlet-plugged',
        'primary-filter-plugged',
        'filter-element-torn',
        'pump-worn',
        'return-valve-weak',
        'return-valve-held-open',
      ]),
    )
  })
})
