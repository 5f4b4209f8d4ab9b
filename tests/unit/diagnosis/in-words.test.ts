import { describe, expect, it } from 'vitest'
import { doubtsOf } from '../../../calculators/diagnosis/doubts.ts'
import { nextCheck } from '../../../calculators/diagnosis/next-check.ts'
import { itemOf } from '../../../calculators/diagnosis/items.ts'
import { rank } from '../../../calculators/diagnosis/rank.ts'
import type { Observation } from '../../../calculators/diagnosis/types.ts'
import { checkStates } from '../../../calculators/terminal/content.ts'
import { knowledge, seen } from './pq12.ts'

const share = (observation: Observation, ...faults: string[]): number => {
  const item = itemOf(knowledge, observation)
  if (item?.from !== 'named') throw new Error('it is not told in words')
  return item.share(faults)
}
const WORDS = ['lower', 'usual', 'higher']
const vacuum = (word: string) => seen('suction-vacuum-gauge', 'priming', word)
const exhausts = (word: string) => seen('exhausts', 'full', word)

describe('a gauge that is told in words', () => {
  it('is as usual in health, and what the model shows with a cause', () => {
    expect(share(vacuum('usual'))).toBeGreaterThan(0.9)
    expect(share(vacuum('higher'), 'suction-strainer-plugged')).toBeGreaterThan(0.6)
    expect(share(vacuum('lower'), 'suction-strainer-plugged')).toBeLessThan(0.05)
    expect(share(seen('header-gauge', 'full', 'lower'), 'return-valve-set-low')).toBeGreaterThan(0.6)
    expect(share(seen('header-gauge', 'full', 'higher'), 'return-valve-set-high')).toBeGreaterThan(0.6)
  })

  it.each([[[]], [['suction-strainer-plugged']], [['suction-strainer-plugged', 'suction-union-draws-air']]])(
    'says one of its words: the shares with %j sum to one',
    (faults) => {
      expect(WORDS.reduce((sum, word) => sum + share(vacuum(word), ...faults), 0)).toBeCloseTo(1, 9)
    },
  )

  it('shows with two causes what either shows', () => {
    const both = share(vacuum('higher'), 'suction-strainer-plugged', 'return-valve-set-low')
    expect(both).toBeCloseTo(share(vacuum('higher'), 'suction-strainer-plugged'), 1)
  })

  it('moves the order to the causes that show it', () => {
    const [first] = rank(knowledge, [vacuum('higher')]).causes
    expect(first?.fault).toBe('suction-strainer-plugged')
    const before = rank(knowledge, []).causes.find(({ fault }) => fault === first?.fault)
    expect(first?.share ?? 0).toBeGreaterThan(3 * (before?.share ?? 1))
  })

  it('is not asked for again in that state', () => {
    const told = [vacuum('higher')]
    const { proposals } = nextCheck(knowledge, rank(knowledge, told), told, checkStates(), 'priming')
    expect(proposals.map(({ check, state }) => `${check.id} ${state}`)).not.toContain(
      'suction-vacuum priming',
    )
  })

  it('told by word and by figure is told twice', () => {
    const { doubts } = doubtsOf(knowledge, [vacuum('higher'), seen('suction-vacuum-gauge', 'priming', 6000)])
    expect(doubts).toHaveLength(2)
  })
})

describe('all exhausts told in words', () => {
  it('say of a cause of one cylinder which way it stands off, and nothing of one that touches all', () => {
    expect(share(exhausts('hotter'), 'nozzle-drips')).toBeGreaterThan(0.5)
    expect(share(exhausts('colder'), 'plunger-worn')).toBeGreaterThan(0.5)
    expect(share(exhausts('alike'), 'suction-strainer-plugged')).toBeGreaterThan(0.9)
    expect(share(exhausts('alike'))).toBeGreaterThan(0.9)
  })

  it('say nothing new where the figure of one that stands off was told, or all figures', () => {
    const ids = (told: readonly Observation[]) => doubtsOf(knowledge, told).sound.map(({ id }) => id)
    const { readings, health } = knowledge.signatures.states.full
    const sound = readings.flatMap(({ id }, place) =>
      id.startsWith('exhaust-') ? [seen(id, 'full', health.readings[place] ?? 0)] : [],
    )
    const [one] = sound
    expect(ids([exhausts('hotter')])).toEqual(['exhausts'])
    expect(ids([exhausts('hotter'), one as Observation])).toEqual(['exhausts', 'exhaust-1'])
    expect(ids([exhausts('hotter'), seen('exhaust-4', 'full', 760)])).toEqual(['exhaust-4'])
    expect(ids([exhausts('hotter'), ...sound])).toEqual(sound.map(({ id }) => id))
  })
})
