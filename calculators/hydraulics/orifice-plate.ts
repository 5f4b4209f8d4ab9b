export type Tappings = 'corner' | 'flange' | 'd-and-half-d'

/** Where ISO 5167-2 holds, for lengths in m. @source iso-5167-2 */
export const PLATE_LIMITS = {
  bore: 0.0125,
  pipe: { minimum: 0.05, maximum: 1 },
  ratio: { minimum: 0.1, maximum: 0.75 },
} as const

/** Under this pipe bore the edge of the plate cannot be made sharp enough, and a term is added. [m] */
const SMALL_PIPE = 0.07112
const INCH = 0.0254

export interface Plate {
  /** Bore of the plate. [m] */
  readonly bore: number
  /** Inside diameter of the pipe. [m] */
  readonly pipe: number
  readonly tappings: Tappings
}

/** L₁ and L₂′: distances of the tappings from the plate, over the pipe's diameter. */
function tappingDistances({ pipe, tappings }: Plate): readonly [number, number] {
  if (tappings === 'corner') return [0, 0]
  return tappings === 'flange' ? [INCH / pipe, INCH / pipe] : [1, 0.47]
}

/**
 * Least pipe Reynolds number of ISO 5167-2. [-]
 * @param plate bore [m], pipe [m], tappings
 * @returns 5000 up to β 0.56, above it 16000β²; with flange tappings 5000 or 170β²D (mm), the greater
 * @source iso-5167-2 (the flange rule from memory)
 */
export function leastPlateReynolds(plate: Plate): number {
  const ratio = plate.bore / plate.pipe
  if (plate.tappings === 'flange') return Math.max(5000, 170 * ratio ** 2 * plate.pipe * 1000)
  return ratio <= 0.56 ? 5000 : 16_000 * ratio ** 2
}

/**
 * Discharge coefficient of an orifice plate after Reader-Harris and Gallagher. [-]
 * @param plate bore [m], pipe [m], tappings; within PLATE_LIMITS
 * @param reynolds on the pipe's diameter [-], from leastPlateReynolds on; outside it is an extrapolation
 * @returns C
 * @source iso-5167-2
 */
export function plateCoefficient(plate: Plate, reynolds: number): number {
  const beta = plate.bore / plate.pipe
  const [before, behind] = tappingDistances(plate)
  const a = ((19_000 * beta) / reynolds) ** 0.8
  const m = (2 * behind) / (1 - beta)
  const base = 0.5961 + 0.0261 * beta ** 2 - 0.216 * beta ** 8 + 0.000521 * ((1e6 * beta) / reynolds) ** 0.7
  const slope = (0.0188 + 0.0063 * a) * beta ** 3.5 * (1e6 / reynolds) ** 0.3
  const upstream =
    (0.043 + 0.08 * Math.exp(-10 * before) - 0.123 * Math.exp(-7 * before)) *
    (1 - 0.11 * a) *
    (beta ** 4 / (1 - beta ** 4))
  const downstream = -0.031 * (m - 0.8 * m ** 1.1) * beta ** 1.3
  const small = plate.pipe < SMALL_PIPE ? 0.011 * (0.75 - beta) * (2.8 - plate.pipe / INCH) : 0
  return base + slope + upstream + downstream + small
}

/**
 * How well the standard knows C, as a share of it. [-]
 * @param ratio β, bore over pipe [-], 0.1 to 0.75
 * @returns half-width of the 95 % interval, for pipes from 71.12 mm on and Reynolds numbers from 10 000 on
 * @source iso-5167-2 (from memory)
 */
export function plateDoubt(ratio: number): number {
  if (ratio < 0.2) return (0.7 - ratio) / 100
  return ratio <= 0.6 ? 0.005 : (1.667 * ratio - 0.5) / 100
}
