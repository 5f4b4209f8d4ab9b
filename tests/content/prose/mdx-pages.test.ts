import { expect, test } from 'vitest'
import { ORIGIN, pairsOf, proseOf, tagsOf } from '../../../components/content/mdx-pages.ts'

const page = `---
order: 1
---

Fuel at <Setpoint of="header-pressure" tolerance /> is held<Cite of="astm-d341" place="3 kPa > 2 kPa" />.

\`\`\`
12 kPa
\`\`\`

<Formula tex={String.raw\`\\frac{a}{b > 0}\`} words="a by b" />
<Calculator id="valve" setPoints={{ reading: 'header-pressure', 'gauge-height': 'gauge-above-valve' }}
  preset={{ reading: '3 kPa' }} />
`

test('prose is what is left without front matter, code and tags, on the lines of the file', () => {
  expect(proseOf(page).split('\n')).toHaveLength(page.split('\n').length)
  expect(proseOf(page).replace(/\s+/g, ' ').trim()).toBe(`Fuel at is held${ORIGIN}.`)
})

test('tags are read with their attributes and lines', () => {
  const [setpoint, cite, formula, calculator] = tagsOf(page)
  expect(setpoint).toEqual({
    name: 'Setpoint',
    attributes: { of: 'header-pressure', tolerance: '' },
    line: 5,
  })
  expect(cite?.attributes['place']).toBe('3 kPa > 2 kPa')
  expect(formula).toMatchObject({ attributes: { words: 'a by b' }, line: 11 })
  expect(calculator?.attributes['setPoints']).toContain("'gauge-height': 'gauge-above-valve'")
  expect(calculator?.attributes['preset']).toBe("{ reading: '3 kPa' }")
})

test('a tag that never ends is named', () => {
  expect(() => proseOf('words <Setpoint of="x" and more')).toThrow(/Setpoint of/)
})

test('an object in a tag is read pair by pair', () => {
  expect(pairsOf("{ drop: '60 kPa', 'other-flow': \"18 L/min\" }")).toEqual({
    drop: '60 kPa',
    'other-flow': '18 L/min',
  })
  expect(pairsOf(undefined)).toEqual({})
})
