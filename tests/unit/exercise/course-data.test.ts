import { describe, expect, it } from 'vitest'
import type { CheckResult } from '../../../calculators/checks/types.ts'
import type { Course } from '../../../calculators/exercise/course.ts'
import { wayOf } from '../../../calculators/exercise/way.ts'
import {
  knowledgeOf,
  packCourse,
  unpackCourse,
  veilCourse,
} from '../../../components/exercise/course-data.ts'
import type { CheckOffer } from '../../../components/exercise/types.ts'
import { states } from '../checks/content.ts'

const seen: CheckResult = {
  readings: [
    { id: 'header-gauge', label: 'Header gauge', kind: 'gaugePressure', value: 210_000, accuracy: 1e4 },
    { id: 'drop', label: 'Drop', kind: 'pressureDifference', value: 0, accuracy: 500, atStop: 'lowest' },
  ],
  glasses: [
    {
      part: 'return-glass',
      label: 'Return glass',
      look: 'full with bubbles',
      words: 'full with bubbles',
      fill: 1,
      gas: 0.0123,
      from: 'through',
      dirt: 0,
      milky: false,
      dirty: false,
    },
  ],
  felt: [{ part: 'relief', label: 'Relief valve', passes: true }],
  says: [],
}
const bare = { readings: [], glasses: [], felt: [] }
const found: CheckResult = { ...bare, says: ['The seal is cut.'] }
const nothingFound: CheckResult = { ...bare, says: ['The seal is sound.'] }
const check = (id: string): CheckOffer => ({
  id,
  label: id,
  kind: 'hand',
  minutes: 1,
  how: 'Look.',
  states: ['idle'],
  cautions: [],
})
const offer = {
  checks: [check('glass'), { ...check('gauge'), otherwise: 'The seal is sound.' }],
  labels: {
    'header-gauge': { label: 'Header gauge', kind: 'gaugePressure' },
    drop: { label: 'Drop', kind: 'pressureDifference' },
    'return-glass': { label: 'Return glass' },
    relief: { label: 'Relief valve' },
  },
} as const
const at = (fault: string, ...severities: number[]) => severities.map((severity) => [{ fault, severity }])

/** Hypothesis 0 is ruled out by the complaint; 2 and 3 fare alike in everything. */
const course: Course = {
  start: 'priming',
  answers: ['gone', 'hidden', 'other'].map((fault) => ({ faults: [fault], weight: 1 })),
  hypotheses: [
    { answer: 0, corners: at('gone', 0.25, 0.5) },
    { answer: 1, corners: at('hidden', 0.25, 0.5) },
    { answer: 2, corners: at('other', 0.25, 0.5) },
    { answer: 2, corners: at('other', 0.5, 0.75) },
    { answer: 2, corners: at('other', 0.75, 1) },
  ],
  masks: [0b00001n, 0b00010n, 0b11100n],
  open: 0b11110n,
  told: [
    { state: 'priming', check: 'glass', result: seen, health: seen, leaves: 0b10010n },
    { state: 'idle', check: 'gauge', result: found, health: nothingFound, leaves: 0b01110n },
  ],
  alike: [1],
  way: [
    { state: 'priming', check: 'glass' },
    { state: 'idle', check: 'gauge' },
  ],
}
const cause = {
  id: 'hidden',
  title: 'Hidden',
  description: 'It hides.',
  confirm: 'Look.',
  severity: 0.5,
  procedure: { title: 'Look', href: '/procedures/look/' },
}

describe('a course as a page carries it', () => {
  const text = veilCourse(packCourse(course, [], offer), { causes: [cause], bench: '/bench/pq-12/' })
  const packed = unpackCourse(text, offer)

  it('leaves out what the complaint has ruled out and what nothing tells apart', () => {
    expect(packed.answers).toEqual([['hidden'], ['other']])
    expect(packed.cells).toEqual([0, 1, 1])
    expect(packed.alike).toEqual([0])
  })

  it('tells the same way as the course itself', () => {
    const costs = { checks: { glass: 1, gauge: 2 }, states }
    const told = wayOf(knowledgeOf(packed), costs, packed.way)
    const itself = wayOf(course, costs, course.way)
    expect(told.map(({ total }) => total)).toEqual(itself.map(({ total }) => total))
    expect(told.map(({ open }) => open.map((place) => packed.answers[place]))).toEqual(
      itself.map(({ open }) => open.map((place) => course.answers[place]?.faults)),
    )
    expect(told.at(-1)?.open).toEqual([0])
  })

  it('shows no id of a fault to whoever glances at it', () => {
    expect(text).not.toContain('hidden')
    expect(text).not.toContain('seal')
  })

  it('comes back with what each check told, and with what it tells in health', () => {
    expect(packed.told.map(({ result: told }) => told)).toEqual([seen, found])
    expect(packed.told.map(({ health }) => health)).toEqual([seen, nothingFound])
    expect(packed.causes).toEqual([cause])
  })
})
