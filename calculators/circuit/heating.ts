import { temperatureOnLine } from '../fuel/viscosity-walther.ts'
import { effectiveness } from '../heat/exchanger.ts'
import { heatContent, specificHeat, temperatureOfContent } from '../heat/petroleum-heat.ts'
import type { Fluid } from './fluid.ts'
import type { Values } from './parameters.ts'

/**
 * Heat content of the fuel behind a heater: as far as its conductance goes, held back by its control. [J/kg]
 * @param kind of its control
 * @param values of the heater
 * @param fluid fuel in the circuit
 * @param content heat content of the fuel before it [J/kg]
 * @param massFlow [kg/s], above 0
 * @returns heat content behind it; a share `heldOn` of what the control would hold back comes through
 * @source ht-library (effectiveness), nbs-mp97 (specific heat), common practice (the control)
 */
export function heatedContent(
  kind: 'thermostat-heater' | 'viscosity-heater',
  values: Values,
  fluid: Fluid,
  content: number,
  massFlow: number,
): number {
  const { conductance, conductanceShare, mediumTemperature, heldOn } = values
  const before = temperatureOfContent(fluid.density15, content)
  const capacity = massFlow * specificHeat(fluid.density15, before)
  const passed = effectiveness((conductance * conductanceShare) / capacity, 0, 'constant')
  const most = before + passed * (mediumTemperature - before)
  const wanted =
    kind === 'thermostat-heater'
      ? values.setPoint
      : temperatureOnLine(fluid.line, values.viscositySetPoint / values.sensorShare)
  // A heater does not cool, unless its medium is colder than the fuel and flows all the same.
  const controlled = Math.max(Math.min(before, most), Math.min(wanted, most))
  return heatContent(fluid.density15, controlled + heldOn * (most - controlled))
}
