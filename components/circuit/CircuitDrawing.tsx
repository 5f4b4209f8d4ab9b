import { FlowLine } from './FlowLine.tsx'
import { labelBox, marksOf, routesOf, symbolBox, toUnits } from './layout.ts'
import { PartLabel } from './PartLabel.tsx'
import { CircuitSymbol } from './symbols/CircuitSymbol.tsx'
import { isSymbolId, STEP, type Box } from './symbols/geometry.ts'
import type { DrawnCircuit, DrawnElement } from './types.ts'

/** Room about the sheet for the frame of a part at its edge. */
const EDGE = 6

interface Props {
  circuit: DrawnCircuit
  /** Names the drawing among others on the page. */
  id: string
  /** Address of a part's entry in the list of the parts. */
  linkOf: (elementId: string) => string
}

/** A circuit as SVG: its lines, the dots where they join, and its parts, each a link. */
export function CircuitDrawing({ circuit, id, linkOf }: Props) {
  const width = circuit.size.width * STEP
  const height = circuit.size.height * STEP
  const marks = marksOf(circuit.elements)
  return (
    <svg
      class="circuit-sheet"
      viewBox={`${-EDGE} ${-EDGE} ${width + 2 * EDGE} ${height + 2 * EDGE}`}
      // A fieldset is no part of SVG, and as an image the drawing would hide its links from those who hear it.
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role
      role="group"
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-description`}
    >
      <title id={`${id}-title`}>{circuit.title}</title>
      <desc id={`${id}-description`}>{circuit.summary}</desc>
      <g aria-hidden="true">
        {circuit.connections.map((connection) =>
          routesOf(circuit, connection).map((route) => (
            <FlowLine key={`${connection.from} ${route.join(' ')}`} route={route} line={connection.line} />
          )),
        )}
        {circuit.junctions.map(({ id: junction, at }) => (
          <circle key={junction} class="circuit-dot" cx={at[0] * STEP} cy={at[1] * STEP} r="5" />
        ))}
        {circuit.connections.map(({ name, line }) => {
          if (!name) return null
          const [x, y] = toUnits(name.at)
          return (
            <text key={name.text} class={`circuit-name circuit-name-${line}`} x={x} y={y + 5}>
              {name.text}
            </text>
          )
        })}
      </g>
      <g aria-hidden="true">
        {circuit.elements.map((element) => (
          <PlacedSymbol key={element.id} element={element} />
        ))}
      </g>
      {circuit.elements.map((element) => (
        <PartLink
          key={element.id}
          element={element}
          mark={marks.get(element.id) ?? ''}
          href={linkOf(element.id)}
        />
      ))}
    </svg>
  )
}

function PlacedSymbol({ element }: { element: DrawnElement }) {
  const [x, y] = toUnits(element.at)
  if (!isSymbolId(element.symbol)) return null
  return (
    <g transform={`translate(${x} ${y})`}>
      <CircuitSymbol symbol={element.symbol} turn={element.turn} count={element.count} />
    </g>
  )
}

/** The part's label, and over its symbol a frame that takes the pointer. */
function PartLink({ element, mark, href }: { element: DrawnElement; mark: string; href: string }) {
  const name = [mark, element.label, element.note ?? ''].join(' ').trim()
  return (
    <a class="circuit-part" id={`drawn-${element.id}`} href={href} aria-label={name}>
      <Frame box={symbolBox(element)} around="symbol" />
      <Frame box={labelBox(element)} around="label" />
      <PartLabel element={element} mark={mark} />
    </a>
  )
}

/** Takes the pointer, and shows which part has the keyboard or was jumped to. */
function Frame({ box, around }: { box: Box; around: 'symbol' | 'label' }) {
  const margin = 3
  return (
    <rect
      class={`circuit-frame circuit-frame-${around}`}
      x={box.left - margin}
      y={box.top - margin}
      width={box.right - box.left + 2 * margin}
      height={box.bottom - box.top + 2 * margin}
    />
  )
}
