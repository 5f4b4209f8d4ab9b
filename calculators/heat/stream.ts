import { fuelDensity, heatContent, temperatureOfContent } from './petroleum-heat.ts'

/**
 * Mass flow of fuel from a volume flow measured at a temperature. [kg/s]
 * @param flow [m³/s]
 * @param density15 density at 15 °C [kg/m³]
 * @param temperature of the fuel where the flow is measured [K]
 * @returns volume flow times density there
 * @source astm-d1250 (1980)
 */
export function massFlowOf(flow: number, density15: number, temperature: number): number {
  return flow * fuelDensity(density15, temperature)
}

/**
 * Temperature of a stream of fuel that has taken up heat. [K]
 * @param power heat taken up [W], negative for heat given away
 * @param massFlow [kg/s], above 0
 * @param inlet temperature before [K]
 * @param density15 density at 15 °C [kg/m³]
 * @returns the temperature behind; not a number where the stream could not give so much
 * @source nbs-mp97 (from memory)
 */
export function temperatureAfter(power: number, massFlow: number, inlet: number, density15: number): number {
  return temperatureOfContent(density15, heatContent(density15, inlet) + power / massFlow)
}

/**
 * Heat that a stream of fuel takes up between two temperatures. [W]
 * @param massFlow [kg/s]
 * @param inlet temperature before [K]
 * @param outlet temperature behind [K]
 * @param density15 density at 15 °C [kg/m³]
 * @returns the heat, negative where the stream cools
 * @source nbs-mp97 (from memory)
 */
export function heatTaken(massFlow: number, inlet: number, outlet: number, density15: number): number {
  return massFlow * (heatContent(density15, outlet) - heatContent(density15, inlet))
}
