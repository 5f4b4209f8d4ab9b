import { describe, expect, it } from 'vitest'
import type { Course } from '../../../calculators/exercise/course.ts'
import { wayOf } from '../../../calculators/exercise/way.ts'
import { knowledgeOf, packCourse, unveiled, veiled } from '../../../components/exercise/course-data.ts'
import { states } from '../checks/content.ts'

const result = { readings: [], glasses: [], felt: [], says: ['The seal is cut.'] }
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
    { state: 'priming', check: 'glass', result, health: result, leaves: 0b10010n },
    { state: 'idle', check: 'gauge', result, health: result, leaves: 0b01110n },
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
  const packed = packCourse(course, [], [cause])

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

  it('shows no id of a fault to whoever glances at it, and comes back whole', () => {
    const text = veiled(packed)
    expect(text).not.toContain('hidden')
    expect(text).not.toContain('seal')
    expect(unveiled(text)).toEqual(packed)
  })
})
