import type { Notice } from '../calculator/types.ts'
import { WALTHER_RANGE } from '../fuel/viscosity-walther.ts'
import type { LineValues } from './measured-line.ts'
import { inWords } from './words.ts'

/** Thresholds of the notices: common practice, no published source. The standard itself gives no distance. */
const CLOSE_POINTS = 20
const VERY_CLOSE_POINTS = 5
const NEAR_EXTRAPOLATION = 0.25
const FAR_EXTRAPOLATION = 1
const NEAR_ONE_POINT = 15
const FAR_ONE_POINT = 40

/** The point on the line that is asked for, and what it is called at the start of a sentence. */
interface Asked {
  readonly name: string
  readonly temperature: number
  readonly kinematicViscosity: number
}

function aboutTwoPoints(input: LineValues, { name, temperature }: Asked): Notice[] {
  const low = Math.min(input.firstTemperature, input.secondTemperature)
  const high = Math.max(input.firstTemperature, input.secondTemperature)
  const span = high - low
  const beyond = Math.max(low - temperature, temperature - high)
  const notices: Notice[] = []
  if (span < CLOSE_POINTS) {
    notices.push({
      grade: span < VERY_CLOSE_POINTS ? 'action' : 'caution',
      text: `The two points are only ${inWords(span, 'temperatureDifference')} apart: a small error in either turns the line. Measure them at least ${CLOSE_POINTS} K apart.`,
    })
  }
  if (beyond > 0) {
    const distance = inWords(beyond, 'temperatureDifference')
    const share = beyond / span
    if (share > FAR_EXTRAPOLATION)
      notices.push({
        grade: 'action',
        text: `${name} lies ${distance} beyond the measured points, further than they are apart. ASTM D341 does not cover that; measure a point near it.`,
      })
    else
      notices.push({
        grade: share > NEAR_EXTRAPOLATION ? 'caution' : 'information',
        text: `${name} lies ${distance} beyond the measured points: this is an extrapolation.`,
      })
  }
  return notices
}

function aboutOnePoint(input: LineValues, { name, temperature }: Asked): Notice[] {
  const distance = Math.abs(temperature - input.firstTemperature)
  const far = distance > FAR_ONE_POINT ? 'action' : distance > NEAR_ONE_POINT ? 'caution' : 'information'
  return [
    {
      grade: far,
      text: `The slope is assumed, not measured, and ${name.toLowerCase()} lies ${inWords(distance, 'temperatureDifference')} from the one measured point. A second measured viscosity makes it sure.`,
    },
  ]
}

/**
 * What a reader must know about a point on the line, beyond the valid ranges of the inputs themselves.
 * @param input what is known of the fuel [SI]
 * @param cloudPoint of the fuel [K]
 * @param asked the point on the line, with its name [SI]
 */
export function noticesOnLine(input: LineValues, cloudPoint: number, asked: Asked): Notice[] {
  const notices = input.form === 'two-points' ? aboutTwoPoints(input, asked) : aboutOnePoint(input, asked)
  const { name, temperature, kinematicViscosity } = asked
  if (kinematicViscosity < WALTHER_RANGE.minimum || kinematicViscosity > WALTHER_RANGE.maximum) {
    notices.push({
      grade: 'caution',
      text: `The viscosity lies outside the range of the equation, ${inWords(WALTHER_RANGE.minimum, 'kinematicViscosity')} to ${inWords(WALTHER_RANGE.maximum, 'kinematicViscosity')}.`,
    })
  }
  if (temperature < cloudPoint) {
    notices.push({
      grade: 'caution',
      text: `${name} is below the cloud point, ${inWords(cloudPoint, 'temperature')}: with wax in it the fuel is thicker than this line says.`,
    })
  }
  return notices
}
