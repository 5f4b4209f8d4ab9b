import type { GlassView } from '../../calculators/circuit/types.ts'
import { GlassFace, WINDOW } from '../circuit/bench/GlassFace.tsx'

const clear = {
  part: '',
  look: 'full and clear',
  words: '',
  fill: 1,
  gas: 0,
  from: 'through',
  dirt: 0,
  milky: false,
} as const satisfies GlassView

/** A picture of each value that a glass can have. */
const pictures: Readonly<Record<string, GlassView>> = {
  'full-and-clear': clear,
  bubbles: { ...clear, gas: 0.12 },
  'part-full': { ...clear, fill: 0.45 },
  empty: { ...clear, fill: 0, from: 'none' },
  milky: { ...clear, milky: true },
  'not-to-be-seen': { ...clear, dirt: 0.95 },
  'running-from-valve': { ...clear, fill: 0.3, from: 'valve' },
  'rising-from-drain': { ...clear, fill: 0.6, from: 'drain' },
}

/** Half of the picture of a glass, its rim included. */
const HALF = WINDOW + 6

/** What a glass that shows this value looks like; nothing for a value without a picture. */
export function GlassPicture({ value, id }: { value: string; id: string }) {
  const view = pictures[value]
  if (view === undefined) return null
  return (
    <svg
      class="glass-picture"
      viewBox={`${-HALF} ${-HALF} ${2 * HALF} ${2 * HALF}`}
      width="56"
      height="56"
      aria-hidden="true"
    >
      <circle class="glass-bezel" r={WINDOW + 3} />
      <GlassFace view={view} id={id} />
    </svg>
  )
}
