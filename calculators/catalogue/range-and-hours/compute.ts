import type { Notice, Refusal, ValuesOf } from '../../calculator/types.ts'
import { dutyCycle } from '../../engine/burn.ts'
import type { DutyState } from '../../engine/burn.ts'
import { step } from '../step.ts'
import { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

/** Shares written as whole per cents can miss 100 by so much without a state being forgotten. */
const ROUNDING = 0.015
/** The longest time that is worth telling. [s] */
const LONGEST = 1e10
/** From this share of the fuel on, one state decides the answer: common practice. */
const DECIDES = 0.6

function statesOf(input: Values): DutyState[] {
  return input.states.map((row) => ({
    share: row['share'] ?? Number.NaN,
    burn: row['burn'] ?? Number.NaN,
    speed: row['speed'] ?? Number.NaN,
  }))
}

function whyNot(states: readonly DutyState[]): Refusal | undefined {
  const sum = states.reduce((total, state) => total + state.share, 0)
  if (Math.abs(sum - 1) > ROUNDING)
    return {
      field: 'states',
      reason: `${inputs.states.label}: the shares of time add up to ${(100 * sum).toFixed(1)} %`,
      accepted: 'shares that add up to 100 %, within 1.5 % for rounding',
    }
  return undefined
}

function noticesOf(states: readonly DutyState[], burn: number, shares: number): Notice[] {
  const parts = states.map((state) => (state.share * state.burn) / (burn * shares))
  const most = parts.indexOf(Math.max(...parts))
  const notices: Notice[] = []
  if ((parts[most] ?? 0) > DECIDES)
    notices.push({
      grade: 'information',
      text: `State ${most + 1} burns ${(100 * (parts[most] ?? 0)).toFixed(0)} % of the fuel. An error in its share or its burn goes straight into the result.`,
    })
  if (Math.abs(shares - 1) > 1e-9)
    notices.push({
      grade: 'information',
      text: `The shares add up to ${(100 * shares).toFixed(1)} % and were divided by that.`,
    })
  return notices
}

/** Mean burn, and how long and how far the fuel lasts. */
export function compute(input: Values) {
  const states = statesOf(input)
  const refusal = whyNot(states)
  if (refusal) return { refusal }
  const mean = dutyCycle(states)
  const usable = input.content * (1 - input.reserve)
  const hours = usable / mean.burn
  if (!(hours <= LONGEST))
    return {
      refusal: {
        field: 'states',
        reason: `${inputs.states.label}: the states burn no fuel between them`,
        accepted: 'at least one state with fuel burnt and a share of the time',
      },
    }
  return {
    outputs: { hours, range: mean.speed * hours, burn: mean.burn, usable },
    steps: [
      step('Mean burn', 'Q̄', 'Σ f Q / Σ f', mean.burn, 'volumeFlow'),
      step('Mean speed', 'v̄', 'Σ f v / Σ f', mean.speed, 'travelSpeed'),
      step('Fuel counted on', 'V_u', 'V (1 − s)', usable, 'volume'),
      { ...step('Running hours', 't', 'V_u / Q̄', hours, 'time'), unit: 'h' },
      step('Range', 'd', 'v̄ t', mean.speed * hours, 'distance'),
    ],
    notices: noticesOf(states, mean.burn, mean.shares),
  }
}
