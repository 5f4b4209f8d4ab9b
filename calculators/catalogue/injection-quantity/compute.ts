import type { Notice, Refusal, Step, ValuesOf } from '../../calculator/types.ts'
import { injectionRate, quantityAtRack } from '../../engine/burn.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

/** Two settings closer than this make a slope of their reading errors. [m] */
const SAME_RACK = 1e-4
const MINUTE = 60

function byRack(input: Values): number {
  return quantityAtRack(
    input.rack,
    { rack: input.firstRack, quantity: input.firstQuantity },
    { rack: input.secondRack, quantity: input.secondQuantity },
  )
}

function whyNot(input: Values): Refusal | undefined {
  if (input.form === 'rate') return undefined
  if (Math.abs(input.secondRack - input.firstRack) < SAME_RACK)
    return {
      field: 'secondRack',
      reason: `${inputs.secondRack.label} is the same as the first one, ${inWords(input.firstRack, 'length')}`,
      accepted: 'a setting at least 0.1 mm away, better 10 mm',
    }
  if (byRack(input) < 0)
    return {
      field: 'rack',
      reason:
        'The line through the two settings gives less than nothing at this rack: it lies beyond shut-off',
      accepted: 'a rack at which fuel is delivered',
    }
  return undefined
}

function aboutCylinders({ cylinders }: Values): Notice[] {
  if (Number.isInteger(cylinders)) return []
  return [{ grade: 'action', text: 'The number of cylinders is not a whole one: check it.' }]
}

function noticesOf(input: Values): Notice[] {
  const cylinders = aboutCylinders(input)
  if (input.form === 'rate')
    return [
      ...cylinders,
      {
        grade: 'information',
        text: 'This is the mean of all cylinders. It says nothing about how evenly they share it: look at the exhaust temperatures.',
      },
    ]
  const low = Math.min(input.firstRack, input.secondRack)
  const high = Math.max(input.firstRack, input.secondRack)
  const notices: Notice[] = [
    ...cylinders,
    {
      grade: 'information',
      text: 'Delivery at one rack changes with speed. The line holds near the speed at which the two settings were calibrated.',
    },
  ]
  if (input.rack < low || input.rack > high)
    notices.push({
      grade: 'caution',
      text: 'The rack lies outside the two settings: this is an extrapolation.',
    })
  return notices
}

/** Quantity a stroke and cylinder, and the fuel that all of them burn. */
export function compute(input: Values) {
  const refusal = whyNot(input)
  if (refusal) return { refusal }
  const rate = injectionRate(input.speed, input.cylinders, input.strokes)
  const quantity = input.form === 'rate' ? input.fuelBurnt / rate : byRack(input)
  const strokes: Step = step(
    'Injections a minute, all cylinders',
    'N',
    input.strokes === 'four' ? 'z n / 2' : 'z n',
    rate * MINUTE,
    'ratio',
  )
  const last =
    input.form === 'rate'
      ? step('Quantity a stroke', 'q', 'Q / N', quantity, 'volume')
      : step('Quantity a stroke', 'q', 'q₁ + (q₂ − q₁) (r − r₁) / (r₂ − r₁)', quantity, 'volume')
  return {
    outputs: { quantity, fuelBurnt: quantity * rate, injections: rate * MINUTE },
    steps: [strokes, { ...last, unit: 'mm3' }, step('Fuel burnt', 'Q', 'q N', quantity * rate, 'volumeFlow')],
    notices: noticesOf(input),
  }
}
