import type { CircuitState, GlassView, Reading } from '../../../calculators/circuit/types.ts'

const point = { pressure: 101_325, temperature: 298.15, gas: 0 }

/** A state that shows these readings and glasses and has parts with these flows [m³/s]. */
export function stateWith(shown: {
  readings?: readonly Reading[]
  glasses?: readonly GlassView[]
  flows?: Readonly<Record<string, number>>
}): CircuitState {
  return {
    ok: true,
    conditions: {
      state: 'idle',
      fuel: 'summer-gas-oil',
      tankTemperature: 298.15,
      ambientTemperature: 293.15,
      tankLevel: 0.7,
      airPressure: 101_325,
    },
    readings: shown.readings ?? [],
    glasses: shown.glasses ?? [],
    parts: Object.entries(shown.flows ?? {}).map(([id, flow]) => ({
      id,
      kind: 'spring-valve',
      label: id,
      flow,
      in: point,
      out: point,
    })),
    lines: [],
    leaks: [],
    engine: { power: 0, rack: 0, wanted: 0, exhaust: [], burnt: 0 },
    remarks: [],
    effort: { solutions: 1, residual: 0 },
  }
}
