import { WATER_DENSITY_60F } from './density-2004.ts'

/**
 * API gravity, 141.5/(relative density 60/60 °F) − 131.5. [°API]
 * @param density60 density at 60 °F [kg/m³], above 0
 * @returns degrees API; heavier than water is below 10
 * @source astm-d1250 (2004, water 999.016 kg/m³)
 */
export function apiGravity(density60: number): number {
  return (141.5 * WATER_DENSITY_60F) / density60 - 131.5
}
