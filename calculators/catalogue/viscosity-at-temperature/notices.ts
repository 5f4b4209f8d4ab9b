import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { WALTHER_RANGE } from '../../fuel/viscosity-walther.ts'
import { inWords } from '../words.ts'
import type { inputs } from './inputs.ts'

/** Thresholds of the notices: common practice, no published source. The standard itself gives no distance. */
const CLOSE_POINTS = 20
const VERY_CLOSE_POINTS = 5
const NEAR_EXTRAPOLATION = 0.25
const FAR_EXTRAPOLATION = 1
const NEAR_ONE_POINT = 15
const FAR_ONE_POINT = 40

type Values = ValuesOf<typeof inputs>

function aboutTwoPoints(input: Values): Notice[] {
  const low = Math.min(input.firstTemperature, input.secondTemperature)
  const high = Math.max(input.firstTemperature, input.secondTemperature)
  const span = high - low
  const beyond = Math.max(low - input.wantedTemperature, input.wantedTemperature - high)
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
        text: `The wanted temperature lies ${distance} beyond the measured points, further than they are apart. ASTM D341 does not cover that; measure a point near it.`,
      })
    else
      notices.push({
        grade: share > NEAR_EXTRAPOLATION ? 'caution' : 'information',
        text: `The wanted temperature lies ${distance} beyond the measured points: this is an extrapolation.`,
      })
  }
  return notices
}

function aboutOnePoint(input: Values): Notice[] {
  const distance = Math.abs(input.wantedTemperature - input.firstTemperature)
  const far = distance > FAR_ONE_POINT ? 'action' : distance > NEAR_ONE_POINT ? 'caution' : 'information'
  return [
    {
      grade: far,
      text: `The slope is assumed, not measured, and the wanted temperature lies ${inWords(distance, 'temperatureDifference')} from the one measured point. A second measured viscosity makes it sure.`,
    },
  ]
}

/** What a reader must know about this result, beyond the valid ranges of the inputs themselves. */
export function noticesOf(input: Values, kinematicViscosity: number): Notice[] {
  const notices = input.form === 'two-points' ? aboutTwoPoints(input) : aboutOnePoint(input)
  if (kinematicViscosity < WALTHER_RANGE.minimum || kinematicViscosity > WALTHER_RANGE.maximum) {
    notices.push({
      grade: 'caution',
      text: `The result lies outside the range of the equation, ${inWords(WALTHER_RANGE.minimum, 'kinematicViscosity')} to ${inWords(WALTHER_RANGE.maximum, 'kinematicViscosity')}.`,
    })
  }
  if (input.wantedTemperature < input.cloudPoint) {
    notices.push({
      grade: 'caution',
      text: `The wanted temperature is below the cloud point, ${inWords(input.cloudPoint, 'temperature')}: with wax in it the fuel is thicker than this line says.`,
    })
  }
  return notices
}
