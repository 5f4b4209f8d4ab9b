import { describe, expect, it } from 'vitest'
import { run } from '../../../calculators/calculator/run.ts'
import type { Calculator, Outputs } from '../../../calculators/calculator/types.ts'
import valveSetPointCheck from '../../../calculators/catalogue/valve-set-point-check/index.ts'
import { tube } from './tube.ts'

const noticesOf = (calculator: Calculator, values: Record<string, number>, accuracies = {}) => {
  const result = run(calculator, values, accuracies)
  if ('refusal' in result) throw new Error(result.refusal.reason)
  return result.notices.filter((notice) => /could also be/.test(notice.text))
}

/** The tube is fast above 2 m/s: at this flow its speed is 1.99 m/s, and 2 % of diameter moves it by 4 %. */
const NEAR = { flow: 1.99 * (Math.PI / 4) * 0.1 ** 2 }

describe('an outcome that flips within the accuracy of the inputs', () => {
  it('is named, with the grade of a caution', () => {
    expect(noticesOf(tube, NEAR)).toEqual([
      { grade: 'caution', text: 'Within the accuracy of the inputs it could also be: «Fast».' },
    ])
  })

  it('is not named far from the border, or with exact inputs', () => {
    expect(noticesOf(tube, { flow: NEAR.flow / 2 })).toEqual([])
    expect(noticesOf(tube, NEAR, { diameter: 0 })).toEqual([])
  })

  it('is not named where the method weighs the accuracies itself', () => {
    const verdict = { ...tube.outputs['verdict'], weighsAccuracy: true } as Outputs[string]
    expect(noticesOf({ ...tube, outputs: { ...tube.outputs, verdict } }, NEAR)).toEqual([])
  })

  it('is left to the guard band by the check of a set point, whatever the reading', () => {
    const reading = Object.entries(valveSetPointCheck.inputs).filter(([, input]) => input.type === 'quantity')
    for (const [id, input] of reading)
      for (const share of [0.9, 0.97, 1, 1.03, 1.1]) {
        const value = typeof input.default === 'number' ? input.default * share : 0
        const result = run(valveSetPointCheck, { [id]: value })
        const notices = 'notices' in result ? result.notices.map((notice) => notice.text) : []
        expect(notices.filter((text) => /could also be/.test(text))).toEqual([])
      }
  })
})
