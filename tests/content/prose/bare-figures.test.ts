import { expect, test } from 'vitest'
import { ORIGIN, mdxPages, proseOf } from '../../../components/content/mdx-pages.ts'
import { FIGURE } from './figure-pattern.ts'

/** Sentences, and the cells of a table: the stretch for which one source speaks. */
function sentencesOf(line: string): string[] {
  return line.split(/(?<=[.?!:])\s+(?=\S)|\|/)
}

/** 'file:line' of every figure with a unit that names no source and does not come from the data. */
function bareFigures(path: string, text: string): string[] {
  return proseOf(text)
    .split('\n')
    .flatMap((line, index) =>
      sentencesOf(line)
        .filter((sentence) => FIGURE.test(sentence) && !sentence.includes(ORIGIN))
        .map((sentence) => `${path}:${index + 1}: «${FIGURE.exec(sentence)?.[0]}» in «${sentence.trim()}»`),
    )
}

test.each([
  ['The header stands at 210 kPa.', 1],
  ['Warm it to 40 °C, then look.', 1],
  ['Of the flow 5% is lost.', 1],
  ['It takes 15 minutes.', 1],
  ['It is 5 mm²/s at 20 °C<Cite of="astm-d341" />. It is 3 mm²/s at 40 °C.', 1],
  ['It is 5 mm²/s<Cite of="astm-d341" />.', 0],
  ['From <Quantity value="2 mm2/s" kind="kinematicViscosity" memory /> to 3 mm²/s.', 0],
  ['The PQ-12 has 2 in parallel, as ISO 4126-1 has it.', 0],
  ['<Formula tex="5 kPa" words="5 kPa" />', 0],
])('«%s» holds %i bare figures', (text, count) => {
  expect(bareFigures('page.mdx', text)).toHaveLength(count)
})

test.each(mdxPages())('$path: figures come from the data or name their source', ({ path, text }) => {
  expect(
    bareFigures(path, text),
    'allowed: <Setpoint of="…" />, <Quantity value="…" …/>, or a <Cite of="…" /> in the same sentence',
  ).toEqual([])
})
