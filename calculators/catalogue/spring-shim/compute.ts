import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { seatArea, SHEAR_MODULUS, shimFor, springRateFromWire } from '../../hydraulics/spring-seat.ts'
import { formatIn } from '../../quantity/format.ts'
import { line } from '../working-line.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

/** A common step of shim stock; what one step does tells how fine a setting can be had. [m] */
const SHIM_STEP = 1e-4
/** Thinner than this no shim is worth the work. [m] */
const NO_SHIM = 2e-5
const RAISED_MUCH = 0.25

const millimetres = (length: number) => formatIn(length, 'length', 'mm', { digits: 3 })

function rateOf(input: Values, area: number): number {
  if (input.rateFrom === 'known') return input.rate
  if (input.rateFrom === 'trial') return (input.trialRise * area) / input.trialShim
  return springRateFromWire(
    SHEAR_MODULUS[input.material],
    input.wire,
    input.outsideDiameter - input.wire,
    input.activeCoils,
  )
}

function noticesOf(input: Values, shim: number, compression: number): Notice[] {
  const notices: Notice[] = []
  if (shim > 0 && input.travelLeft - shim < input.lift)
    notices.push({
      grade: 'action',
      text: `With the shim the coils touch before the valve is open: ${millimetres(Math.max(0, input.travelLeft - shim))} of travel are left and ${millimetres(input.lift)} are needed. Fit a stronger spring instead.`,
    })
  if (-shim > compression)
    notices.push({
      grade: 'action',
      text: 'So much cannot be taken out: the spring would hang loose. Fit a weaker spring instead.',
    })
  if (input.wanted > (1 + RAISED_MUCH) * input.present)
    notices.push({
      grade: 'caution',
      text: 'That is much to shim. A spring that has lost so much of its force is tired and goes on losing it: measure it and change it.',
    })
  notices.push({
    grade: 'information',
    text: 'Set the valve again after the shim and read it on the bench. The sum brings you near; the bench decides.',
  })
  return notices
}

/** Shim that brings a spring valve to its wanted setting, and whether the spring has room for it. */
export function compute(input: Values) {
  if (input.rateFrom === 'wire' && input.outsideDiameter <= 2 * input.wire)
    return {
      refusal: {
        field: 'outsideDiameter',
        reason: `${inputs.outsideDiameter.label} is ${millimetres(input.outsideDiameter)}, no more than two wires of ${millimetres(input.wire)}`,
        accepted: 'a coil wider than two wires; usual springs measure 5 to 20 wires',
      },
    }
  const area = seatArea(input.seatDiameter)
  const rate = rateOf(input, area)
  const shim = shimFor(input.wanted - input.present, area, rate)
  const compression = (input.present * area) / rate
  const step = (SHIM_STEP * rate) / area
  const tooMuch = shim > 0 ? input.travelLeft - shim < input.lift : -shim > compression
  const verdict =
    Math.abs(shim) < NO_SHIM ? 'leave' : tooMuch ? 'changeSpring' : shim > 0 ? 'addShim' : 'takeOut'
  return {
    outputs: {
      verdict: verdict as 'leave' | 'changeSpring' | 'addShim' | 'takeOut',
      shim,
      changeByStep: step,
      travelAfter: input.travelLeft - shim,
      rateUsed: rate,
      forceWanted: input.wanted * area,
    },
    steps: [
      line('Area of the seat', 'A', 'π d²/4', area, 'area'),
      line('Force at the present setting', 'F₁', 'p₁ A', input.present * area, 'force'),
      line('Force at the wanted setting', 'F₂', 'p₂ A', input.wanted * area, 'force'),
      line(
        'Spring rate',
        'k',
        input.rateFrom === 'known'
          ? 'as given'
          : input.rateFrom === 'trial'
            ? 'Δp₀ A/s₀'
            : 'G d_w⁴/(8 (D_o − d_w)³ n)',
        rate,
        'springRate',
      ),
      line('Present compression', 'x₁', 'F₁/k', compression, 'length'),
      line('Shim', 's', '(F₂ − F₁)/k', shim, 'length'),
      line('Change by 0.1 mm', 'Δp', 'k × 0.1 mm/A', step, 'pressureDifference'),
    ],
    notices: noticesOf(input, shim, compression),
  }
}
