import { temperatureOnLine } from '../fuel/viscosity-walther.ts'
import { effectiveness } from '../heat/exchanger.ts'
import { heatContent, specificHeat, temperatureOfContent } from '../heat/petroleum-heat.ts'
import type { Fluid } from './fluid.ts'
import type { Values } from './parameters.ts'

/** Below its set point by so much, a control that would heat is wide open. [K] Common practice. */
const WIDE_OPEN = 2

/**
 * Heat content of the fuel behind a heater: as far as its conductance goes, held back by its control. Steam condenses
 * and a rod gives heat only where they are the warmer, so that neither ever cools; cooling water or thermal oil
 * (`coolsToo`) flows on when it is the colder, and cools as far as the control, which knows the fuel alone, lets it by.
 * @param kind of its control
 * @param values of the heater
 * @param fluid fuel in the circuit
 * @param content heat content of the fuel before it [J/kg]
 * @param massFlow [kg/s], above 0
 * @returns heat content behind it [J/kg]; a share `heldOn` of what the control would hold back comes through
 * @source ht-library (effectiveness), nbs-mp97 (specific heat), common practice (the control; what cools)
 */
export function heatedContent(
  kind: 'thermostat-heater' | 'viscosity-heater',
  values: Values,
  fluid: Fluid,
  content: number,
  massFlow: number,
): number {
  const { conductance, conductanceShare, mediumTemperature, heldOn, coolsToo } = values
  const before = temperatureOfContent(fluid.density15, content)
  if (mediumTemperature <= before && coolsToo < 0.5) return content
  const capacity = massFlow * specificHeat(fluid.density15, before)
  const passed = effectiveness((conductance * conductanceShare) / capacity, 0, 'constant')
  const most = before + passed * (mediumTemperature - before)
  const wanted =
    kind === 'thermostat-heater'
      ? values.setPoint
      : temperatureOnLine(fluid.line, values.viscositySetPoint / values.sensorShare)
  const open = Math.min(1, Math.max(0, (wanted - before) / WIDE_OPEN))
  const controlled =
    most < before ? before + open * (most - before) : Math.max(before, Math.min(wanted, most))
  return heatContent(fluid.density15, controlled + heldOn * (most - controlled))
}
