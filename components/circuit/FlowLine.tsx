import { segmentsOf, type Segment } from './layout.ts'
import { steady } from './steady.tsx'
import type { Point } from './symbols/geometry.ts'
import type { LineKind } from './types.ts'

const ARROW_LENGTH = 12

/** A piece of line shorter than this has no room for an arrow. */
const SHORTEST_WITH_ARROW = 36

const lengthOf = ([[x1, y1], [x2, y2]]: Segment): number => Math.abs(x2 - x1) + Math.abs(y2 - y1)

/** How a line of a circuit that runs looks. */
export interface LineLook {
  /** Step of the scale of pressure or temperature; 'below' where the scale begins above it. */
  readonly shade: number | 'below'
  /** How fast its dashes move: 0 where the fuel stands. */
  readonly pace: number
  /** Against the drawn direction. */
  readonly backward: boolean
}

export const shadeClass = (shade: LineLook['shade']): string => `shade shade-${shade}`

interface Props {
  route: readonly Point[]
  line: LineKind
  look?: LineLook | undefined
}

/** One line from end to end, with the arrow of its flow on the longest straight piece. */
export const FlowLine = steady(({ route, line, look }: Props) => {
  const d = route.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${x} ${y}`).join('')
  const longest = segmentsOf(route).toSorted((a, b) => lengthOf(b) - lengthOf(a))[0]
  const flows = line !== 'gauge' && line !== 'shaft' && look?.pace !== 0
  return (
    <g class={look && shadeClass(look.shade)}>
      {look && <path class={`circuit-line circuit-casing circuit-casing-${line}`} d={d} />}
      <path class={`circuit-line circuit-line-${line}`} d={d} />
      {look && look.pace > 0 && (
        <path
          class={`circuit-dashes circuit-pace-${look.pace} ${look.backward ? 'circuit-backward' : ''}`}
          d={d}
        />
      )}
      {line === 'shaft' && <path class="circuit-shaft-gap" d={d} />}
      {flows && longest && lengthOf(longest) >= SHORTEST_WITH_ARROW && (
        <Arrow along={look?.backward ? [longest[1], longest[0]] : longest} line={line} />
      )}
    </g>
  )
})

/** Filled where the pump moves the fuel on to the engine, open where it goes back. */
function Arrow({ along, line }: { along: Segment; line: LineKind }) {
  const [[x1, y1], [x2, y2]] = along
  const angle = (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI
  const half = ARROW_LENGTH / 2
  return (
    <path
      class={`circuit-arrow circuit-arrow-${line}`}
      d={`M${half} 0L${-half} ${-half}V${half}Z`}
      transform={`translate(${(x1 + x2) / 2} ${(y1 + y2) / 2})rotate(${angle})`}
    />
  )
}
