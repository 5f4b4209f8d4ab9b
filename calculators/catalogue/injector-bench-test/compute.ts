import type { Notice, Refusal, ValuesOf } from '../../calculator/types.ts'
import { leakOffAtReference } from '../../engine/leak-off.ts'
import { lineThroughPoint, viscosityOnLine } from '../../fuel/viscosity-walther.ts'
import { median } from '../../statistics/median.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

/** Of the oil's data sheet. [K] */
const DATA_SHEET_TEMPERATURE = 313.15
/** So far under the lower limit it is no setting that has settled, but a spring or seat that has failed: common practice. */
const FAILED_BELOW = 0.8
/** Half-width of the tester gauge's usual band, within which a limit cannot be told: common practice. [Pa] */
const USUAL_DOUBT = 0.3e6
/** Usual doubt of a corrected leak-off time, as a share of it: common practice. */
const TIME_DOUBT = 0.06
/** A leak-off time corrected by more than this factor leans on the oil's data sheet: common practice. */
const LARGE_CORRECTION = 1.5

interface Found {
  readonly correctedTime: number
  readonly fromSet: number
}

function rejectReasons(input: Values, found: Found): string[] {
  return [
    ...(input.spray === 'even' ? [] : ['the spray']),
    ...(input.seat === 'drips' ? ['the seat, which drips'] : []),
    ...(found.correctedTime < input.shortestLeakOff ? ['the leak-off time'] : []),
    ...(input.openingPressure < FAILED_BELOW * input.lowestOpening
      ? ['an opening pressure far below the limit: a broken spring or a failed seat']
      : []),
  ]
}

function resetReasons(input: Values, found: Found): string[] {
  return [
    ...(input.openingPressure < input.lowestOpening ? ['the opening pressure is low'] : []),
    ...(input.openingPressure > input.highestOpening ? ['the opening pressure is high'] : []),
    ...(Math.abs(found.fromSet) > input.permittedInSet
      ? ['it departs too far from the rest of the set']
      : []),
  ]
}

function noticesOf(input: Values, found: Found): Notice[] {
  const notices: Notice[] = []
  const reject = rejectReasons(input, found)
  const reset = resetReasons(input, found)
  if (reject.length > 0) notices.push({ grade: 'action', text: `Rejected for ${reject.join('; and for ')}.` })
  if (reset.length > 0) notices.push({ grade: 'caution', text: `To be set again: ${reset.join('; ')}.` })
  if (input.seat === 'damp')
    notices.push({
      grade: 'caution',
      text: 'A damp tip is the beginning of a leaking seat. It may pass now; note it, and look at it first next time.',
    })
  const limits = [input.lowestOpening, input.highestOpening]
  if (limits.some((limit) => Math.abs(input.openingPressure - limit) < USUAL_DOUBT))
    notices.push({
      grade: 'caution',
      text: `The opening pressure lies within ${inWords(USUAL_DOUBT, 'pressureDifference')} of a limit, about what a tester’s gauge is good for. Check the gauge before the injector.`,
    })
  if (Math.abs(found.correctedTime / input.shortestLeakOff - 1) < TIME_DOUBT)
    notices.push({
      grade: 'caution',
      text: 'The leak-off time lies so near its limit that stop-watch, oil and thermometer leave it open: look at its ±, and test again nearer to the stated temperature.',
    })
  const factor = found.correctedTime / input.leakOffTime
  if (factor > LARGE_CORRECTION || factor < 1 / LARGE_CORRECTION)
    notices.push({
      grade: 'caution',
      text: 'The leak-off time was corrected by more than half. Bring the oil nearer to the stated temperature and test again.',
    })
  return notices
}

function whyNot(input: Values): Refusal | undefined {
  if (input.highestOpening > input.lowestOpening) return undefined
  return {
    field: 'highestOpening',
    reason: `${inputs.highestOpening.label} is ${inWords(input.highestOpening, 'gaugePressure')}, not above the lowest one, ${inWords(input.lowestOpening, 'gaugePressure')}`,
    accepted: 'a pressure above the lowest permitted one',
  }
}

/** Opening pressure against its limits and its set, leak-off time at the stated oil, and the verdict. */
export function compute(input: Values) {
  const refusal = whyNot(input)
  if (refusal) return { refusal }
  const line = lineThroughPoint(
    { temperature: DATA_SHEET_TEMPERATURE, kinematicViscosity: input.oilViscosity },
    input.slope,
  )
  const viscosity = viscosityOnLine(line, input.oilTemperature)
  const setMedian = median(input.set.map((row) => row['opening'] ?? Number.NaN))
  const found: Found = {
    correctedTime: leakOffAtReference(input.leakOffTime, viscosity, input.statedViscosity),
    fromSet: input.openingPressure - setMedian,
  }
  const rejected = rejectReasons(input, found).length > 0
  const reset = resetReasons(input, found).length > 0
  return {
    outputs: {
      verdict: rejected ? ('reject' as const) : reset ? ('reset' as const) : ('pass' as const),
      fromMiddle: input.openingPressure - (input.lowestOpening + input.highestOpening) / 2,
      fromSet: found.fromSet,
      correctedTime: found.correctedTime,
      viscosity,
    },
    steps: [
      step(
        'Viscosity of the oil during the test',
        'ν',
        'line of slope B through ν₄₀ at 40 °C',
        viscosity,
        'kinematicViscosity',
      ),
      step('Leak-off time at the stated oil', 't₀', 't ν₀ / ν', found.correctedTime, 'time'),
      {
        ...step('Median of the rest of the set', 'p̃', 'middle value', setMedian, 'gaugePressure'),
        unit: 'MPa',
      },
      { ...step('Departure from it', 'Δp', 'p_o − p̃', found.fromSet, 'pressureDifference'), unit: 'MPa' },
    ],
    notices: noticesOf(input, found),
  }
}
