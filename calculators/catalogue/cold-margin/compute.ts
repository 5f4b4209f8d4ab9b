import type { Notice, ValuesOf } from '../../calculator/types.ts'
import { temperatureAlongLine } from '../../heat/cooling.ts'
import { specificHeat } from '../../heat/petroleum-heat.ts'
import { step } from '../step.ts'
import { inWords } from '../words.ts'
import { inputs } from './inputs.ts'

type Values = ValuesOf<typeof inputs>

/** Mesh of the test for the CFPP. [m] @source en-116 */
const TEST_MESH = 45e-6
/** From this distance below the cloud point on, the test no longer tells where service fails. [K] @source en-116 */
const TRUSTED_BELOW_CLOUD = 12
/** Two laboratories differ by about so much near 0 °C, so less is no margin. [K] @source en-116 (for the CFPP) */
const SURE_MARGIN = 3

export type AtStrainer = 'clear' | 'near' | 'wax' | 'plugs' | 'gels'

/** What the strainer meets at a temperature. A fine one is stopped by the first wax, a coarse one by the CFPP. */
export function atStrainer(temperature: number, input: Values): AtStrainer {
  const above = (point: number) => temperature - point
  if (above(input.pourPoint) <= 0) return 'gels'
  if (above(input.cloudPoint) >= SURE_MARGIN) return 'clear'
  if (above(input.cloudPoint) > 0) return 'near'
  if (input.mesh < TEST_MESH) return 'plugs'
  return above(input.filterPoint) >= SURE_MARGIN ? 'wax' : 'plugs'
}

function noticesOf(input: Values, strainer: number, verdict: AtStrainer): Notice[] {
  const notices: Notice[] = []
  if (input.filterPoint > input.cloudPoint || input.pourPoint > input.filterPoint)
    notices.push({
      grade: 'caution',
      text: 'The three points usually fall in the order cloud, CFPP, pour. Look whether two were exchanged or belong to another fuel.',
    })
  if (input.cloudPoint - input.filterPoint > TRUSTED_BELOW_CLOUD)
    notices.push({
      grade: 'caution',
      text: `The CFPP lies more than ${inWords(TRUSTED_BELOW_CLOUD, 'temperatureDifference')} below the cloud point. Then the test no longer tells where a fuel system fails, says EN 116: trust the cloud point.`,
    })
  if (input.mesh < TEST_MESH)
    notices.push({
      grade: 'caution',
      text: 'The opening is finer than the mesh of the CFPP test. Such an element plugs with the first wax, so the cloud point is its limit.',
    })
  if (verdict === 'wax' || verdict === 'plugs' || verdict === 'gels')
    notices.push({
      grade: 'caution',
      text: 'The heater stands behind the strainer and cannot help it. Warm the tank or the line, or change the fuel; wax in the strainer shows as suction vacuum.',
    })
  if (input.outdoors < input.cloudPoint && strainer > input.cloudPoint)
    notices.push({
      grade: 'caution',
      text: 'Running, the fuel is too fast to cool in the line. Standing, it takes the temperature outside and clouds: the first minute after the next start is the critical one.',
    })
  return notices
}

/** Margins at the strainer, and what standing fuel in the line does. */
export function compute(input: Values) {
  const heatOfFuel = specificHeat(input.densityAt15, input.tank)
  const conductance = input.coefficient * Math.PI * input.outside * input.length
  const heatFlow = input.flow * input.densityAt15 * heatOfFuel
  const strainer = temperatureAlongLine(input.tank, input.outdoors, conductance, heatFlow)
  const verdict = atStrainer(strainer, input)
  const margin = (point: number) => strainer - point
  return {
    outputs: {
      strainerTemperature: strainer,
      verdict,
      cloudMargin: margin(input.cloudPoint),
      filterMargin: margin(input.filterPoint),
      pourMargin: margin(input.pourPoint),
      standing: atStrainer(Math.min(input.outdoors, strainer), input),
    },
    steps: [
      step('Specific heat', 'c', '4186.8 (0.403 + 0.00081 t) / √d', heatOfFuel, 'specificHeat'),
      step('Heat let go by the line for each kelvin', 'h A', 'h π D L', conductance, 'thermalConductance'),
      step('Heat carried by the flow for each kelvin', 'ṁ c', 'Q ρ c', heatFlow, 'thermalConductance'),
      step(
        'Temperature at the strainer',
        'T_s',
        'T_a + (T_t − T_a) exp(−h A / ṁ c)',
        strainer,
        'temperature',
      ),
      step('Lost on the way', 'ΔT', 'T_t − T_s', input.tank - strainer, 'temperatureDifference'),
    ],
    notices: noticesOf(input, strainer, verdict),
  }
}
