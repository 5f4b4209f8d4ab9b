import { defineCalculator } from '../../calculator/define-calculator.ts'
import type { QuantityOutput } from '../../calculator/types.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

const number = (size: string, symbol: string) =>
  ({ type: 'quantity', label: `Number for ${size} µm(c)`, symbol, kind: 'ratio', units: ['1'] }) as const

const upTo = (size: string, symbol: string) =>
  ({
    type: 'quantity',
    label: `Particles of ${size} µm(c) and larger, up to`,
    symbol,
    kind: 'particleConcentration',
  }) as const satisfies QuantityOutput

export default defineCalculator({
  id: 'cleanliness-code',
  title: 'Cleanliness code',
  purpose: 'Which ISO 4406 code do these counts have, and which counts does a code stand for?',
  alsoCalled: ['ISO 4406', 'particle count', 'dirt code', 'contamination code'],
  equation: {
    tex: String.raw`R_4/R_6/R_{14}: \quad \text{each } R \text{ is the row of the table that holds } N`,
    words:
      'For each of the three sizes the count of particles of that size and larger in one millilitre is looked up in the table of the standard; the numbers of the three rows, small size first, are the code.',
  },
  sources: ['iso-4406'],
  validity:
    'Counts by an automatic counter calibrated to ISO 11171, up to 2.5 million particles in a millilitre. Water drops and gas bubbles are counted as particles. One number up is about twice the count, so two laboratories one number apart have not contradicted each other.',
  inputs,
  outputs: {
    scale4: number('4', 'R₄'),
    scale6: number('6', 'R₆'),
    scale14: number('14', 'R₁₄'),
    verdict: {
      type: 'verdict',
      label: 'The counting',
      options: {
        sure: { label: 'No number needs the sign ≥', grade: 'good' },
        few: { label: 'Too few particles seen: a number carries the sign ≥', grade: 'caution' },
      },
    },
    upTo4: upTo('4', 'N₄'),
    upTo6: upTo('6', 'N₆'),
    upTo14: upTo('14', 'N₁₄'),
  },
  compute,
  cases,
})
