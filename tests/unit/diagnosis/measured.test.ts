import { describe, expect, it } from 'vitest'
import { choices, trial, type Choice } from '../../bench/ranking-trials.ts'
import { seeded } from '../../bench/simulate.ts'
import { knowledge, source } from './pq12.ts'

const PLANTS = 24
const choose = choices['priming and one running state'] as Choice

// Loose bounds: the full measurement is `npm run ranking`.
describe('simulated plants with noise on every gauge', () => {
  it('have their cause first mostly, and among the first three nearly always', () => {
    const draw = seeded(5)
    const trials = Array.from({ length: PLANTS }, () => trial(knowledge, source, choose, 1, draw)[0])
    const within = (places: number) =>
      trials.filter(({ groupPlaces: [place = places] }) => place < places).length / PLANTS
    expect(within(1)).toBeGreaterThan(0.65)
    expect(within(3)).toBeGreaterThan(0.85)
  })

  it('have both of two causes among the first four more often than not', () => {
    const draw = seeded(6)
    const trials = Array.from({ length: PLANTS / 2 }, () => trial(knowledge, source, choose, 2, draw)[0])
    const both = trials.filter(({ groupPlaces }) => groupPlaces.every((place) => place < 4)).length
    expect(both / trials.length).toBeGreaterThan(0.5)
  })
})
