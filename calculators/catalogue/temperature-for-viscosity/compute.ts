import type { Notice, Refusal, Step, ValuesOf } from '../../calculator/types.ts'
import { doubleLogarithm, temperatureOnLine, type WaltherLine } from '../../fuel/viscosity-walther.ts'
import { lineOf, lineSteps, ratioStep, temperatureLimits, whyNoLine, zInSymbols } from '../measured-line.ts'
import { noticesOnLine } from '../measured-line-notices.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

export type Values = ValuesOf<typeof inputs>

const viscosityInWords = (value: number) => inWords(value, 'kinematicViscosity')

/** The window must have a width. A wanted viscosity outside it has an answer, with a verdict that says so. */
function whyNoWindow({ lowestViscosity, highestViscosity }: Values): Refusal | undefined {
  if (lowestViscosity < highestViscosity) return undefined
  return {
    field: 'lowestViscosity',
    reason: `${inputs.lowestViscosity.label} is ${viscosityInWords(lowestViscosity)}, not under the highest, ${viscosityInWords(highestViscosity)}`,
    accepted: `less than ${viscosityInWords(highestViscosity)}`,
  }
}

type Verdict = 'fits' | 'tooTight' | 'outside' | 'aboveLimit'

function verdictOf(input: Values, setPoint: number, room: number): Verdict {
  if (setPoint > input.highestTemperature) return 'aboveLimit'
  if (room < 0) return 'outside'
  return room < input.controlBand ? 'tooTight' : 'fits'
}

type Viscosity = 'wantedViscosity' | 'highestViscosity' | 'lowestViscosity'

/** The field whose viscosity the line reaches only where no fuel is liquid, or undefined. */
function outOfReach(input: Values, line: WaltherLine): Refusal | undefined {
  const { minimum, maximum } = temperatureLimits.physical
  const fields: readonly Viscosity[] = ['wantedViscosity', 'highestViscosity', 'lowestViscosity']
  const field = fields.find((id) => {
    const temperature = temperatureOnLine(line, input[id])
    return !(temperature >= minimum && temperature <= maximum)
  })
  return (
    field && {
      field,
      reason: `${inputs[field].label} is ${viscosityInWords(input[field])}, which this fuel does not come to between ${inWords(minimum, 'temperature')} and ${inWords(maximum, 'temperature')}`,
      accepted: 'a viscosity nearer to the measured ones',
    }
  )
}

function noticesOf(input: Values, setPoint: number, coldest: number, warmest: number): Notice[] {
  const notices = noticesOnLine(input, input.cloudPoint, {
    name: 'The set point',
    temperature: setPoint,
    kinematicViscosity: input.wantedViscosity,
  })
  if (input.highestTemperature < coldest)
    notices.push({
      grade: 'action',
      text: `At the highest temperature allowed, ${inWords(input.highestTemperature, 'temperature')}, the fuel is still thicker than allowed. This circuit cannot burn it.`,
    })
  else if (input.highestTemperature < warmest)
    notices.push({
      grade: 'information',
      text: `The temperature limit of the circuit, not the viscosity, is the warm end: ${inWords(input.highestTemperature, 'temperature')}.`,
    })
  if (coldest < input.cloudPoint && setPoint >= input.cloudPoint)
    notices.push({
      grade: 'information',
      text: `The cold end of the window lies below the cloud point: there wax decides, and the fuel must stay above ${inWords(input.cloudPoint, 'temperature')}.`,
    })
  return notices
}

/** Temperatures for the wanted viscosity and both ends of the window, and whether the control fits between. */
export function compute(input: Values) {
  const line = lineOf(input)
  const refusal = whyNoLine(input) ?? whyNoWindow(input) ?? outOfReach(input, line)
  if (refusal) return { refusal }
  const setPoint = temperatureOnLine(line, input.wantedViscosity)
  const coldest = temperatureOnLine(line, input.highestViscosity)
  const warmest = temperatureOnLine(line, input.lowestViscosity)
  const warmEnd = Math.min(warmest, input.highestTemperature)
  const room = Math.min(setPoint - coldest, warmEnd - setPoint)
  const verdict = verdictOf(input, setPoint, room)
  const temperature = (label: string, symbol: string, index: string, value: number): Step => ({
    label,
    symbol,
    rule: `10^((A − W${index}) / B)`,
    value,
    kind: 'temperature',
  })
  return {
    outputs: { setPoint, verdict, coldest, warmest, room },
    steps: [
      ...lineSteps(input, line),
      ratioStep(
        'Double logarithm at the wanted viscosity',
        'W',
        `log log (${zInSymbols()})`,
        doubleLogarithm(input.wantedViscosity),
      ),
      temperature('Set point', 'T', '', setPoint),
      temperature('Cold end: temperature at the highest viscosity', 'T_cold', '_max', coldest),
      temperature('Warm end: temperature at the lowest viscosity', 'T_warm', '_min', warmest),
      {
        label: 'Room from the set point to the nearer end',
        symbol: 'ΔT',
        rule: 'the smaller of T − T_cold and min(T_warm, T_max) − T',
        value: room,
        kind: 'temperatureDifference' as const,
      },
    ],
    notices: noticesOf(input, setPoint, coldest, warmest),
  }
}
