import type { GlassView } from '../../../calculators/circuit/types.ts'
import { steady } from '../steady.tsx'

/** Radius of the window, in units of the picture. */
export const WINDOW = 50

/** The bubbles of a full glass of foam; fewer are shown of less gas. */
const MOST_BUBBLES = 46
const MOST_SPECKS = 60

/** Fractions spread evenly between 0 and 1, the same each time: a picture must not jump when it is drawn anew. */
const spread = (index: number, root: number): number => (index * root) % 1
const ROOT_ACROSS = 0.6180339887
const ROOT_ALONG = 0.7548776662
const ROOT_SIZE = 0.569840291

interface Dot {
  readonly x: number
  readonly y: number
  readonly radius: number
}

function dots(count: number, from: number, to: number, least: number, most: number): Dot[] {
  return Array.from({ length: count }, (_, index) => ({
    x: (spread(index + 1, ROOT_ACROSS) * 2 - 1) * WINDOW * 0.86,
    y: from + (to - from) * spread(index + 1, ROOT_ALONG),
    radius: least + (most - least) * spread(index + 1, ROOT_SIZE) ** 2,
  }))
}

/** How many bubbles stand for this share of gas: the eye sees the first few per cent best. */
const bubbleCount = (gas: number): number =>
  gas <= 0 ? 0 : Math.max(2, Math.round(MOST_BUBBLES * Math.min(1, Math.sqrt(gas * 1.6))))

interface Props {
  view: GlassView
  /** Unique on the page: names the window's edge. */
  id: string
}

/** What one sees through the window of a glass, about the point (0, 0). */
export function GlassFace({ view, id }: Props) {
  const { fill, gas, from, dirt, milky } = view
  return (
    <Window
      id={id}
      level={Math.round(WINDOW - 2 * WINDOW * fill)}
      holds={fill >= FULL ? 'all' : fill > 0 ? 'some' : 'none'}
      bubbles={fill > 0 ? bubbleCount(gas) : 0}
      from={from}
      dirt={Math.round(dirt * 100) / 100}
      milky={milky}
    />
  )
}

/** A fuller glass shows no surface. */
const FULL = 0.995

interface WindowProps extends Pick<GlassView, 'from' | 'dirt' | 'milky'> {
  id: string
  /** Height of the surface, in whole units of the picture. */
  level: number
  /** How much of the glass the fuel takes. */
  holds: 'all' | 'some' | 'none'
  bubbles: number
}

/** The picture, in steps that the eye can tell: a smaller change draws nothing anew. */
const Window = steady(({ id, level, holds, bubbles, from, dirt, milky }: WindowProps) => (
  <g class={milky ? 'glass-face glass-milky' : 'glass-face'}>
    <clipPath id={`${id}-window`}>
      <circle r={WINDOW} />
    </clipPath>
    <g clip-path={`url(#${id}-window)`}>
      <rect class="glass-back" x={-WINDOW} y={-WINDOW} width={2 * WINDOW} height={2 * WINDOW} />
      {holds === 'none' && <path class="glass-wall" d="M-34-36V36M-17-46V46M0-50V50M17-46V46M34-36V36" />}
      {from === 'valve' && <Stream level={level} />}
      {holds !== 'none' && <Fuel full={holds === 'all'} through={from === 'through'} level={level} />}
      {holds !== 'none' && <Bubbles count={bubbles} level={level} />}
      {from === 'drain' && holds !== 'none' && <Rising level={level} />}
      <Dirt share={dirt} />
    </g>
    <circle class="glass-edge" r={WINDOW} />
    <path class="glass-gleam" d="M-38-20A43 43 0 0 1-14-40" />
  </g>
))

function Fuel({ full, through, level }: { full: boolean; through: boolean; level: number }) {
  return (
    <g>
      <rect class="glass-fuel" x={-WINDOW} y={level} width={2 * WINDOW} height={WINDOW - level} />
      {full ? (
        through && <Streaks />
      ) : (
        <path
          class="glass-surface"
          d={`M${-WINDOW} ${level}Q-25 ${level - 3} 0 ${level}T${WINDOW} ${level}`}
        />
      )}
    </g>
  )
}

/** Faint lines along a clear flow: that it moves is seen by them only. */
function Streaks() {
  return <path class="glass-streaks" d="M-26-60V60M-4-60V60M20-60V60" />
}

/** A jet from the pipe above into what stands below. */
function Stream({ level }: { level: number }) {
  const foot = Math.min(level, WINDOW)
  return (
    <g>
      <path class="glass-stream" d={`M-7-50Q-4 ${(foot - 50) / 2}-5 ${foot}H5Q4 ${(foot - 50) / 2} 7-50Z`} />
      <path
        class="glass-stream-drops"
        d={`M-14 ${foot - 7}l-3-5M14 ${foot - 7}l3-5M-21 ${foot - 2}l-6-3M21 ${foot - 2}l6-3`}
      />
    </g>
  )
}

/** Arrows from below: the fuel comes up the drain. */
function Rising({ level }: { level: number }) {
  const top = Math.min(level + 10, 30)
  return (
    <path
      class="glass-rising"
      d={[-24, 0, 24]
        .map((x) => `M${x} 46V${top}M${x - 7} ${top + 8}L${x} ${top}L${x + 7} ${top + 8}`)
        .join('')}
    />
  )
}

function Bubbles({ count, level }: { count: number; level: number }) {
  const shown = dots(count, Math.max(level + 4, -46), 46, 2.2, 8)
  return (
    <g class="glass-bubbles">
      {shown.map(({ x, y, radius }, index) => (
        <circle key={x} class={`glass-bubble glass-bubble-${index % 4}`} cx={x} cy={y} r={radius} />
      ))}
    </g>
  )
}

/** A film over the window that thickens, and specks in it. */
function Dirt({ share }: { share: number }) {
  if (share <= 0) return null
  return (
    <g class="glass-dirt">
      <circle class="glass-film" r={WINDOW} fill-opacity={Math.min(0.92, share)} />
      {dots(Math.round(MOST_SPECKS * share), -48, 48, 0.8, 3).map(({ x, y, radius }) => (
        <circle key={x} class="glass-speck" cx={x} cy={y} r={radius} />
      ))}
    </g>
  )
}
