import { describe, expect, test } from 'vitest'
import { readingEase, syllablesOf } from '../../tools/reading-ease.mts'
import { pageEases, runningText } from '../../tools/readability.mts'

describe('the formulas', () => {
  // The example in the documentation of the npm packages flesch and flesch-kincaid.
  const text = 'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.'

  test('give what their published example gives: 1 sentence, 13 words, 26 syllables', () => {
    const { words, sentences, grade, ease } = readingEase(text)
    expect([words, sentences]).toEqual([13, 1])
    expect(grade).toBeCloseTo(13.08, 2)
    expect(ease).toBeCloseTo(24.44, 2)
  })

  test('short sentences of short words are easier than a long one', () => {
    expect(readingEase('Stop the pump. Lock it out.').grade).toBeLessThan(
      readingEase('Deactivate and subsequently isolate the recirculation pump.').grade,
    )
  })

  test.each(
    Object.entries({
      fuel: 1,
      pipes: 1,
      pumped: 1,
      rules: 1,
      gauges: 2,
      heated: 2,
      glasses: 2,
      table: 2,
      litres: 2,
      settled: 2,
      bypass: 2,
      safety: 2,
      fluid: 2,
      strainer: 2,
      restricted: 3,
      injector: 3,
      vacuum: 3,
      radius: 3,
      temperature: 4,
      viscosity: 4,
      material: 4,
      secondary: 4,
    }),
  )('%s: %i syllables', (word, count) => {
    expect(syllablesOf(word)).toBe(count)
  })
})

test('running text is what is read as sentences', () => {
  const page = `---
title: A title
purpose: Keep it tight.
---

## A heading

1. Warm the **fuel** to <Setpoint of="fuel-temperature-low" />. **See:** it flows<Cite of="iso-3104" />.

| a table | b |
`
  expect(runningText(page).replace(/\s+/g, ' ').trim()).toBe(
    'Keep it tight. Warm the fuel to . See: it flows.',
  )
})

// Grade 8 is what guides to plain English ask of texts for everybody (common practice, no published source).
test.each(pageEases())('$path reads as plain English', ({ grade, words }) => {
  expect(words).toBeGreaterThan(100)
  expect(grade).toBeLessThan(8)
})
