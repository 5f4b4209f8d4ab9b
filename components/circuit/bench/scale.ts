import { formatNumber, withoutFinalZeros } from '../../../calculators/quantity/format.ts'
import { unitForSystem } from '../../../calculators/quantity/kinds.ts'
import type { KindId, UnitSystem } from '../../../calculators/quantity/types.ts'
import { fromSI, unitOf } from '../../../calculators/quantity/units.ts'
import type { CircuitState, FlowPoint } from '../../../calculators/circuit/types.ts'
import type { Colouring } from './types.ts'

/** Shades of the scale, dark to light in even steps of lightness; shades.css holds their colours. */
export const SHADES = 10

/** Room above health, so that the first fault does not run off the scale. */
const PRESSURE_ROOM = 1.3
/** [K] */
const TEMPERATURE_ROOM = 10
/** Share of a step by which a value may lie below the scale and still have its first shade: nobody reads that on a gauge. */
const SLACK = 0.06

const ROUND_STEPS = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10]
const MOST_DIGITS = 4

export interface Scale {
  /** The shade of a place: 0 to SHADES − 1, and 'below' where the scale begins above it. */
  readonly shadeOf: (point: FlowPoint) => number | 'below'
  /** One text for each border between the shades, the outer ones included: '0', '50' … */
  readonly borders: readonly string[]
  readonly unit: string
  /** What has the shade 'below', where it can occur. */
  readonly below?: string
}

/** The smallest round number that is not less: 1, 2, 2.5, 4 or 5 by a power of ten. */
function roundUp(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value))
  return (ROUND_STEPS.find((step) => step * power >= value * (1 - 1e-9)) ?? 10) * power
}

/**
 * The scale by which the lines are coloured. It follows the healthy circuit, so that it stands still while a fault
 * is made worse; what goes beyond takes the last shade.
 */
export function scaleOf(colouring: Colouring, health: CircuitState, system: UnitSystem): Scale {
  const points = health.lines.flatMap(({ from, to }) => [from, to])
  const air = health.conditions.airPressure
  const kind: KindId = colouring === 'pressure' ? 'gaugePressure' : 'temperature'
  const unit = unitForSystem(kind, system)
  const shown = (si: number): number => fromSI(si, unit, kind)
  const valueOf = (point: FlowPoint): number =>
    shown(colouring === 'pressure' ? point.pressure - air : point.temperature)
  const values = points.map(valueOf)
  const lowest = colouring === 'pressure' ? 0 : Math.min(...values)
  const room =
    colouring === 'pressure'
      ? Math.max(...values) * PRESSURE_ROOM
      : Math.max(...values) + TEMPERATURE_ROOM / unitOf(unit).factor
  const step = roundUp(Math.max(room - lowest, Number.EPSILON) / SHADES)
  const first = Math.floor(lowest / step) * step
  return {
    shadeOf: (point) => {
      const steps = (valueOf(point) - first) / step
      if (steps < -SLACK) return 'below'
      return Math.min(SHADES - 1, Math.max(0, Math.floor(steps)))
    },
    borders: Array.from({ length: SHADES + 1 }, (_, index) =>
      withoutFinalZeros(formatNumber(first + index * step, MOST_DIGITS)),
    ),
    unit: unitOf(unit).symbol,
    ...(colouring === 'pressure' ? { below: 'lines below the pressure of the air' } : {}),
  }
}
