import { splitEnd, type CircuitProblem } from '../../calculators/circuit/validate.ts'
import { isSymbolId, STEP, symbols, type Box, type Point, type Port } from './symbols/geometry.ts'
import type { DrawnCircuit, DrawnConnection, DrawnElement, Place, Turn } from './types.ts'

/** Size of the letters in the drawing; at the drawing's least shown width they still measure 12 px. */
export const LETTER = 15
export const LINE_HEIGHT = 17
export const BADGE_RADIUS = 12

/** Mean width of a letter in letter heights, a little on the wide side so that boxes are never too small. */
const LETTER_WIDTH = 0.6
/** The same of the heavy letters in which an instrument's reading stands. */
const HEAVY_LETTER_WIDTH = 0.64

export const toUnits = ([x, y]: Place): Point => [x * STEP, y * STEP]

/** A point turned clockwise about the symbol's middle. */
export function turned([x, y]: Point, turn: Turn): Point {
  if (turn === 90) return [-y || 0, x]
  if (turn === 180) return [-x || 0, -y || 0]
  if (turn === 270) return [y, -x || 0]
  return [x, y]
}

const sum = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1]]

function portsOf(element: DrawnElement): Readonly<Record<string, Port>> {
  return isSymbolId(element.symbol) ? symbols[element.symbol].ports(element.count) : {}
}

/** Where lines meet a port: one place, or one for each of the like parts that the port stands for. */
function endsAt(circuit: DrawnCircuit, end: string): Point[] {
  const [id, name] = splitEnd(end)
  const junction = circuit.junctions.find((candidate) => candidate.id === id)
  if (junction) return [toUnits(junction.at)]
  const element = circuit.elements.find((candidate) => candidate.id === id)
  const port = element && portsOf(element)[name]
  if (!port) throw new Error(`${end} is no port of this circuit`)
  const first = sum(toUnits(element.at), turned(port.at, element.turn))
  const { spread } = port
  if (!spread) return [first]
  return Array.from({ length: element.count }, (_, index) => {
    const offset = index - (element.count - 1) / 2
    return sum(first, turned([spread[0] * offset, spread[1] * offset], element.turn))
  })
}

/** The lines of a connection, each as its corners from end to end. */
export function routesOf(circuit: DrawnCircuit, connection: DrawnConnection): Point[][] {
  const ends = endsAt(circuit, connection.to)
  const bends = connection.via.map(toUnits)
  return endsAt(circuit, connection.from).flatMap((start, index) => {
    const end = ends[index]
    return end ? [[start, ...bends, end]] : []
  })
}

/** What an element's symbol covers on the drawing. */
export function symbolBox(element: DrawnElement): Box {
  if (!isSymbolId(element.symbol)) throw new Error(`«${element.symbol}» is no symbol`)
  const { left, top, right, bottom } = symbols[element.symbol].box(element.count)
  const middle = toUnits(element.at)
  const [x1, y1] = sum(middle, turned([left, top], element.turn))
  const [x2, y2] = sum(middle, turned([right, bottom], element.turn))
  return {
    left: Math.min(x1, x2),
    top: Math.min(y1, y2),
    right: Math.max(x1, x2),
    bottom: Math.max(y1, y2),
  }
}

/** A text cut into lines of at most so many letters, at its spaces. */
export function wrap(words: string, most: number): string[] {
  const lines: string[] = []
  for (const word of words.split(' ')) {
    const last = lines.at(-1)
    if (last !== undefined && last.length + 1 + word.length <= most)
      lines[lines.length - 1] = `${last} ${word}`
    else lines.push(word)
  }
  return lines
}

/** Lines of an element's label, its note last. */
export function labelLines(element: DrawnElement): string[] {
  return [...wrap(element.label, element.labelWrap), ...(element.note === undefined ? [] : [element.note])]
}

/**
 * What the words of an element's label and the circle of its number cover.
 * @param reads whether its note is what it reads now
 */
export function labelBox(element: DrawnElement, reads = false): Box {
  const [x, y] = toUnits(element.labelAt)
  const lines = labelLines(element)
  const heavy = reads ? (element.note ?? '').length * LETTER * HEAVY_LETTER_WIDTH : 0
  const reach = BADGE_RADIUS + 5 + Math.max(textWidth(lines), heavy)
  const half = Math.max(BADGE_RADIUS, (lines.length * LINE_HEIGHT) / 2)
  const start = element.labelAlign === 'start'
  return {
    left: start ? x - BADGE_RADIUS : x - reach,
    right: start ? x + reach : x + BADGE_RADIUS,
    top: y - half,
    bottom: y + half,
  }
}

/** What a line's own words cover. */
export function nameBox(name: { text: string; at: Place }): Box {
  const [x, y] = toUnits(name.at)
  return { left: x, top: y - LINE_HEIGHT / 2, right: x + textWidth([name.text]), bottom: y + LINE_HEIGHT / 2 }
}

const textWidth = (lines: readonly string[]): number =>
  Math.max(...lines.map((line) => line.length)) * LETTER * LETTER_WIDTH

/** The mark in the circle: the place on the way, or for parts beside the way a letter in the order of the data. */
export function marksOf(
  elements: readonly { id: string; number?: number | undefined }[],
): Map<string, string> {
  const beside = elements.filter((element) => element.number === undefined)
  return new Map(
    elements.map((element) => [
      element.id,
      String(element.number ?? String.fromCodePoint(65 + beside.indexOf(element))),
    ]),
  )
}

/** What keeps a sound net from being drawn: slanted lines, ends of unlike number, parts outside the sheet. */
export function drawingProblems(circuit: DrawnCircuit): CircuitProblem[] {
  const problems: CircuitProblem[] = []
  circuit.connections.forEach((connection, index) => {
    const [from, to] = [endsAt(circuit, connection.from), endsAt(circuit, connection.to)]
    if (from.length !== to.length) {
      const message = `${connection.from} has ${from.length} lines and ${connection.to} has ${to.length}; give both the same count`
      problems.push({ path: ['connections', index, 'to'], message })
    }
    const slanted = routesOf(circuit, connection).flatMap(segmentsOf).find(isSlanted)
    if (!slanted) return
    const [a, b] = slanted.map(([x, y]) => `[${x / STEP}, ${y / STEP}]`)
    const message = `the line runs slanted from ${a} to ${b}; lines run level or upright, so add a bend or move the part`
    problems.push({ path: ['connections', index, 'via'], message })
  })
  const { width, height } = circuit.size
  circuit.elements.forEach((element, index) => {
    for (const [field, box] of [
      ['at', symbolBox(element)],
      ['labelAt', labelBox(element)],
    ] as const) {
      if (box.left >= 0 && box.top >= 0 && box.right <= width * STEP && box.bottom <= height * STEP) continue
      const message = `${element.id} reaches outside the sheet of ${width} by ${height} steps; move it or widen the size`
      problems.push({ path: ['elements', index, field], message })
    }
  })
  return problems
}

export type Segment = readonly [Point, Point]

/** The straight pieces of a line. */
export function segmentsOf(route: readonly Point[]): Segment[] {
  return route.slice(1).flatMap((end, index) => {
    const start = route[index]
    return start ? [[start, end] as const] : []
  })
}

const isSlanted = ([[x1, y1], [x2, y2]]: Segment): boolean =>
  Math.abs(x1 - x2) > 1e-6 && Math.abs(y1 - y2) > 1e-6
