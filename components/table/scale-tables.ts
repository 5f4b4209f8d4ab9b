import { countsOf, LARGEST_SCALE_NUMBER } from '../../calculators/cleanliness/iso-4406.ts'
import {
  ENGLER_BEGINS,
  englerDegrees,
  REDWOOD_BEGINS,
  redwoodSeconds,
} from '../../calculators/fuel/engler-redwood.ts'
import {
  FUROL_TEMPERATURES,
  HUNDRED_FAHRENHEIT,
  SAYBOLT_RANGE,
  sayboltFurol,
  sayboltUniversal,
} from '../../calculators/fuel/saybolt.ts'
import { formatIn, formatNumber, withoutFinalZeros } from '../../calculators/quantity/format.ts'
import { fromSI } from '../../calculators/quantity/units.ts'
import type { ReferenceTable } from './types.ts'

/** The whole table of scale numbers. */
export function cleanlinessCodes(): ReferenceTable {
  const perMillilitre = (count: number) =>
    withoutFinalZeros(formatNumber(fromSI(count, '1/mL', 'particleConcentration'), 3))
  return {
    id: 'scale-numbers',
    title: 'Scale numbers of ISO 4406',
    caption: 'Particles of a size and larger in one millilitre.',
    head: 'Scale number',
    columns: ['More than', 'Up to and including'],
    rows: Array.from({ length: LARGEST_SCALE_NUMBER + 1 }, (_, place) => LARGEST_SCALE_NUMBER - place).map(
      (number) => {
        const { above, upTo } = countsOf(number)
        return {
          name: String(number),
          cells: [number === 0 ? '0' : perMillilitre(above), perMillilitre(upTo)],
          origin: { source: 'iso-4406' },
        }
      },
    ),
    notes: [
      'Three numbers make a code, for particles of 4, 6 and 14 µm(c) and larger, in this order.',
      'A count of fewer than 20 particles in the sample gets the sign ≥ before its number.',
    ],
  }
}

const SQUARE_MILLIMETRE = 1e-6
const VISCOSITIES = [2, 3, 4, 5, 7, 10, 15, 20, 30, 50, 80, 100, 150, 180, 250, 380, 500, 700]

/** One viscosity on the old scales. */
export function viscosityScales(): ReferenceTable {
  return {
    id: 'side-by-side',
    title: 'Scales side by side',
    caption: 'One viscosity as four scales tell it.',
    head: 'Kinematic viscosity',
    columns: [
      'Engler, °E',
      'Redwood No. 1, s',
      'Saybolt Universal at 100 °F, s',
      'Saybolt Furol at 122 °F, s',
    ],
    rows: VISCOSITIES.map((number) => {
      const viscosity = number * SQUARE_MILLIMETRE
      const engler = englerDegrees(viscosity)
      const redwood = redwoodSeconds(viscosity)
      return {
        name: formatIn(viscosity, 'kinematicViscosity', 'mm2/s', { digits: String(number).length }),
        cells: [
          engler < ENGLER_BEGINS ? '' : formatNumber(engler, 3),
          redwood < REDWOOD_BEGINS ? '' : formatNumber(redwood, 3),
          viscosity < SAYBOLT_RANGE.universal
            ? ''
            : formatNumber(sayboltUniversal(viscosity, HUNDRED_FAHRENHEIT), 3),
          viscosity < SAYBOLT_RANGE.furol
            ? ''
            : formatNumber(sayboltFurol(viscosity, FUROL_TEMPERATURES.cool), 3),
        ],
        origin: { source: ['hydraulic-institute-scales', 'redwood-equations', 'astm-d2161'], memory: true },
      }
    }),
    notes: [
      'Engler degrees and Redwood seconds by equations from memory that agree with a printed table within a few per cent; the calculator of viscosity scales says more of each.',
      'Each column holds at the temperature at which the viscosity was measured. The scales change at one temperature, never across two.',
    ],
  }
}
