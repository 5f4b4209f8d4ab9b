import type { ComponentChildren } from 'preact'
import { useMemo } from 'preact/hooks'
import { FlowLine, shadeClass, type LineLook } from './FlowLine.tsx'
import { labelBox, marksOf, routesOf, symbolBox, toUnits } from './layout.ts'
import { PartLabel } from './PartLabel.tsx'
import { steady } from './steady.tsx'
import { CircuitSymbol } from './symbols/CircuitSymbol.tsx'
import { isSymbolId, STEP, type Box } from './symbols/geometry.ts'
import type { DrawnCircuit, DrawnElement } from './types.ts'

/** Room about the sheet for the frame of a part at its edge. */
const EDGE = 6

/** More to the sides where readings stand under the labels, which are longer than these. */
const LIVE_EDGE = 36

/** What a drawing shows of a circuit that runs; without it the drawing shows the circuit as built. */
export interface LiveDrawing {
  /** Looks of the lines by their index in the data. */
  readonly lines: ReadonlyMap<number, LineLook>
  /** Shades of the parts by id: the headers take theirs. */
  readonly shades: ReadonlyMap<string, LineLook['shade']>
  /** Drawn over a part's symbol, about its middle: a needle, what a glass shows. */
  readonly face: (element: DrawnElement) => ComponentChildren
  /** Stands under a part's label: what it reads now. */
  readonly note: (element: DrawnElement) => string | undefined
  /** Id of the part that was chosen. */
  readonly chosen: string | undefined
  readonly choose: (elementId: string) => void
}

interface Props {
  circuit: DrawnCircuit
  /** Names the drawing among others on the page. */
  id: string
  /** Address of a part's entry in the list of the parts. */
  linkOf: (elementId: string) => string
  live?: LiveDrawing
}

/** A circuit as SVG: its lines, the dots where they join, and its parts, each a link. */
export function CircuitDrawing({ circuit, id, linkOf, live }: Props) {
  const width = circuit.size.width * STEP
  const height = circuit.size.height * STEP
  const marks = useMemo(() => marksOf(circuit.elements), [circuit])
  const routes = useMemo(
    () =>
      circuit.connections.map((connection) =>
        routesOf(circuit, connection).map((route) => ({
          key: `${connection.from} ${route.join(' ')}`,
          route,
        })),
      ),
    [circuit],
  )
  const side = live ? LIVE_EDGE : EDGE
  return (
    <svg
      class={live ? 'circuit-sheet circuit-live' : 'circuit-sheet'}
      viewBox={`${-side} ${-EDGE} ${width + 2 * side} ${height + 2 * EDGE}`}
      // A fieldset is no part of SVG, and as an image the drawing would hide its links from those who hear it.
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role
      role="group"
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-description`}
    >
      <title id={`${id}-title`}>{circuit.title}</title>
      <desc id={`${id}-description`}>{circuit.summary}</desc>
      <g aria-hidden="true">
        {circuit.connections.map((connection, index) =>
          routes[index]?.map(({ key, route }) => (
            <FlowLine key={key} route={route} line={connection.line} look={live?.lines.get(index)} />
          )),
        )}
        <StillMarks circuit={circuit} />
      </g>
      <g aria-hidden="true">
        {circuit.elements.map((element) => (
          <PlacedSymbol
            key={element.id}
            element={element}
            shade={live?.shades.get(element.id)}
            face={live?.face(element)}
          />
        ))}
      </g>
      {circuit.elements.map((element) => (
        <PartLink
          key={element.id}
          element={element}
          mark={marks.get(element.id) ?? ''}
          href={linkOf(element.id)}
          reading={live?.note(element)}
          chosen={live?.chosen === element.id}
          choose={live?.choose}
        />
      ))}
    </svg>
  )
}

/** The dots where lines join, and the words along the lines. */
const StillMarks = steady(({ circuit }: { circuit: DrawnCircuit }) => (
  <>
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
  </>
))

const SteadySymbol = steady(CircuitSymbol)

interface PlacedProps {
  element: DrawnElement
  shade: LineLook['shade'] | undefined
  face: ComponentChildren
}

function PlacedSymbol({ element, shade, face }: PlacedProps) {
  const [x, y] = toUnits(element.at)
  if (!isSymbolId(element.symbol)) return null
  return (
    <g
      transform={`translate(${x} ${y})`}
      class={shade === undefined ? undefined : `circuit-placed ${shadeClass(shade)}`}
    >
      <SteadySymbol symbol={element.symbol} turn={element.turn} count={element.count} />
      {face}
    </g>
  )
}

interface PartLinkProps {
  element: DrawnElement
  mark: string
  href: string
  /** What it reads now; undefined where nothing is read at it. */
  reading: string | undefined
  chosen: boolean
  /** Undefined where the drawing shows the circuit as built. */
  choose: LiveDrawing['choose'] | undefined
}

/** The part's label, and over its symbol a frame that takes the pointer. */
const PartLink = steady(({ element: asBuilt, mark, href, reading, chosen, choose }: PartLinkProps) => {
  const element = reading === undefined ? asBuilt : { ...asBuilt, note: reading }
  const name = [mark, element.label, element.note ?? ''].join(' ').trim()
  return (
    <a
      class="circuit-part"
      id={`drawn-${element.id}`}
      href={href}
      aria-label={name}
      aria-current={chosen ? 'true' : undefined}
      onClick={
        choose &&
        ((event: Event) => {
          event.preventDefault()
          choose(element.id)
        })
      }
    >
      <Frame box={symbolBox(element)} around="symbol" />
      <Frame box={labelBox(element, reading !== undefined)} around="label" />
      <PartLabel element={element} mark={mark} reads={reading !== undefined} />
    </a>
  )
})

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
