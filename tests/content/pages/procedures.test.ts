import { describe, expect, test } from 'vitest'
import { attributesIn, entriesOf, yamlFile, type Procedure } from './content.ts'

const procedures = entriesOf<Procedure>('procedures')
const cautions = yamlFile<{ signal: string }>('cautions/cautions.yaml')
const signals = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE']
const setPoints = Object.keys(yamlFile<Record<string, unknown>>('plants/pq-12.yaml')['setPoints'] ?? {})

const sectionsWithSteps = ['Before you start', 'Steps', 'Prove it', 'Give it back']

/** Where nothing is opened there is nothing to prove tight, and the heading says only 'Prove it'. */
const headingIn = (body: string, heading: string) =>
  heading === 'Prove it' && body.includes('\n## Prove it tight\n') ? 'Prove it tight' : heading

/** Text of the section under a heading, up to the next heading of that level. */
const sectionOf = (body: string, heading: string) =>
  body.split(/^## /m).find((section) => section.startsWith(`${headingIn(body, heading)}\n`)) ?? ''

describe.each(procedures)('procedure $id', ({ data, body }) => {
  test('names in its front matter each caution that its body shows, and shows each one once', () => {
    const shown = attributesIn(body, 'Caution', 'id')
    expect(shown.filter((id) => !data.cautions.includes(id))).toEqual([])
    expect(shown.filter((id, place) => shown.indexOf(id) !== place)).toEqual([])
    expect(data.cautions.filter((id) => !(id in cautions))).toEqual([])
  })

  test('repeats before its step each caution with the word DANGER', () => {
    const grave = data.cautions.filter((id) => cautions[id]?.signal === 'DANGER')
    expect(attributesIn(body, 'Caution', 'id')).toEqual(expect.arrayContaining(grave))
  })

  test('names its cautions with the gravest first, as the top of the page shows them', () => {
    const ranks = data.cautions.map((id) => signals.indexOf(cautions[id]?.signal ?? ''))
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
  })

  test('has the four sections in their order', () => {
    const places = sectionsWithSteps.map((heading) => body.indexOf(`\n## ${headingIn(body, heading)}\n`))
    expect(places).not.toContain(-1)
    expect(places).toEqual([...places].sort((a, b) => a - b))
  })

  test.each(sectionsWithSteps)('«%s»: numbers run through, and each step says what to see', (heading) => {
    const steps = [...sectionOf(body, heading).matchAll(/^(\d+)\. (.*)$/gm)]
    expect(steps.length).toBeGreaterThan(2)
    expect(steps.map((step) => Number(step[1]))).toEqual(steps.map((_, place) => place + 1))
    expect(steps.map((step) => step[2] ?? '').filter((step) => !step.includes('**See:**'))).toEqual([])
  })

  test('a caution stands before a step, not after the last one', () => {
    for (const heading of sectionsWithSteps) {
      const section = sectionOf(body, heading)
      const lastStep = [...section.matchAll(/^\d+\. /gm)].at(-1)?.index ?? 0
      expect(section.lastIndexOf('<Caution')).toBeLessThan(lastStep)
    }
  })

  test('isolates and locks out before the first cover is opened', () => {
    const before = sectionOf(body, 'Before you start')
    expect(attributesIn(before, 'Caution', 'id')).toContain('unexpected-start')
    expect(before).toMatch(/lock and tag/)
    expect(before).toMatch(/try to start/)
  })

  test('its set points exist', () => {
    const named = [
      ...data.acceptance.flatMap((line) => line.setPoints ?? []),
      ...attributesIn(body, 'Setpoint', 'of'),
    ]
    expect(named.length).toBeGreaterThan(0)
    expect(named.filter((id) => !setPoints.includes(id))).toEqual([])
  })
})

test('set points in symptoms exist', () => {
  const named = entriesOf('symptoms').flatMap(({ body }) => attributesIn(body, 'Setpoint', 'of'))
  expect(named.filter((id) => !setPoints.includes(id))).toEqual([])
})
