import { BADGE_RADIUS, LETTER, LINE_HEIGHT, labelLines, toUnits } from './layout.ts'
import type { DrawnElement } from './types.ts'

interface Props {
  element: DrawnElement
  mark: string
  /** Its note is what it reads now. */
  reads?: boolean
}

/**
 * The circle with the part's mark, and beside it the part's name. Each text ends in a space, so that what is read
 * aloud or copied does not run together.
 */
export function PartLabel({ element, mark, reads = false }: Props) {
  const [x, y] = toUnits(element.labelAt)
  const lines = labelLines(element)
  const start = element.labelAlign === 'start'
  const note = reads ? 'circuit-note circuit-reading' : 'circuit-note'
  const first = y - ((lines.length - 1) * LINE_HEIGHT) / 2 + LETTER * 0.35
  return (
    <g>
      <circle
        class={element.number === undefined ? 'circuit-badge circuit-badge-beside' : 'circuit-badge'}
        cx={x}
        cy={y}
        r={BADGE_RADIUS}
      />
      <text class="circuit-mark" x={x} y={y + LETTER * 0.35}>
        {`${mark} `}
      </text>
      {lines.map((line, index) => (
        <text
          // By its place: a new reading is written into the old text, which costs the sheet no new layout.
          // oxlint-disable-next-line react/no-array-index-key
          key={index}
          class={element.note !== undefined && index === lines.length - 1 ? note : 'circuit-label'}
          x={x + (start ? 1 : -1) * (BADGE_RADIUS + 5)}
          y={first + index * LINE_HEIGHT}
          text-anchor={start ? undefined : 'end'}
        >
          {`${line} `}
        </text>
      ))}
    </g>
  )
}
