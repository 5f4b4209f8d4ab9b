import { steady } from '../steady.tsx'

/** Radius of a gauge on the sheet. */
const RADIUS = 15
const NEEDLE = 11
/** The needle goes from lower left to lower right, as on most gauges. */
const SWEEP = 270

/** Where the needle stands for a reading over the range, to a degree: less nobody sees. */
export const needleAngle = (share: number): number =>
  Math.round(-SWEEP / 2 + SWEEP * Math.min(1, Math.max(0, share)))

interface Props {
  /** Angles of the needle. [°] */
  now: number
  health: number
}

/** The face of a gauge with its needle, and a mark where the needle stands in health. */
export const GaugeFace = steady(({ now, health }: Props) => (
  <g class="gauge-face">
    <circle class="symbol-body" r={RADIUS} />
    <path class="gauge-scale" d="M-8.5 8.5A12 12 0 1 1 8.5 8.5" />
    <path class="gauge-health" d={`M0-14.5V-8.5`} transform={`rotate(${health})`} />
    <path class="gauge-needle" d={`M0 4V-${NEEDLE}`} transform={`rotate(${now})`} />
    <circle class="symbol-solid" r="2" />
  </g>
))
