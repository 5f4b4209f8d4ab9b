import { describe, expect, test } from 'vitest'
import { pipeLaw } from '../../../calculators/hydraulics/elements/pipe.ts'
import { pipeFlow } from '../../../calculators/hydraulics/pipe.ts'
import turbulent from '../hydraulics/friction.json' with { type: 'json' }
import { lossAt } from './case.ts'
import transition from './transition.json' with { type: 'json' }

const BORE = 0.02
const FUEL = { density: 840, kinematicViscosity: 3e-6 }

/** Darcy factor that the law of a pipe shows. */
function factorOf(reynolds: number, relativeRoughness: number): number {
  const pipe = { length: 1, bore: BORE, roughness: relativeRoughness * BORE, minorLosses: 0 }
  const flow = (reynolds * Math.PI * BORE * FUEL.kinematicViscosity) / 4
  const published = pipeFlow(pipe, flow, FUEL.kinematicViscosity, FUEL.density)
  return (published.factor * lossAt(pipeLaw(pipe, FUEL), flow).drop) / published.drop
}

const { library: turbulentLibrary } = turbulent
const { library: transitionLibrary } = transition

describe(`pipes of a network against ${turbulentLibrary}`, () => {
  const cases = turbulent.cases.map(([reynolds = NaN, roughness = NaN, factor = NaN]) => ({
    reynolds,
    roughness,
    off: Math.abs(factorOf(reynolds, roughness) / factor - 1),
  }))
  const worstOf = (chosen: (one: (typeof cases)[number]) => boolean) =>
    Math.max(...cases.filter(chosen).map(({ off }) => off))

  test('laminar: the same', () => {
    expect(worstOf(({ reynolds }) => reynolds <= 2000)).toBeLessThan(1e-9)
  })

  test('where Swamee and Jain meant it, Re 5000 to 1e8 and walls of 1e-6 to 1e-2: within 3 % of Colebrook and White', () => {
    const inRange = ({ reynolds, roughness }: { reynolds: number; roughness: number }) =>
      reynolds >= 5000 && roughness >= 1e-6 && roughness <= 1e-2
    const worst = worstOf(inRange)
    console.log(`Swamee and Jain against exact Colebrook and White: worst ${(100 * worst).toFixed(2)} %`)
    expect(worst).toBeLessThan(0.03)
  })
})

describe(`between Re 2000 and 4000, where no factor is agreed, against ${transitionLibrary}`, () => {
  const cases = transition.cases.map(
    ([reynolds = NaN, roughness = NaN, laminar = NaN, churchill = NaN, colebrook = NaN]) => {
      return { ours: factorOf(reynolds, roughness), laminar, churchill, colebrook }
    },
  )

  test('never below the laminar factor, never more than 3.5 % above the turbulent one', () => {
    for (const { ours, laminar, colebrook } of cases) {
      expect(ours).toBeGreaterThan(laminar * (1 - 1e-9))
      expect(ours).toBeLessThan(colebrook * 1.035)
    }
  })

  test('leans to the laminar side of Churchill, by at most a third', () => {
    const offs = cases.map(({ ours, churchill }) => ours / churchill - 1)
    const [least, most] = [Math.min(...offs), Math.max(...offs)]
    console.log(`Against Churchill: ${(100 * least).toFixed(1)} to ${(100 * most).toFixed(1)} %`)
    expect(least).toBeGreaterThan(-1 / 3)
    expect(most).toBeLessThan(0.05)
  })
})
