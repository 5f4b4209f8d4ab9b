import { describe, expect, it } from 'vitest'
import { downstreamOf } from '../../../calculators/circuit/validate.ts'
import {
  drawingProblems,
  labelBox,
  marksOf,
  nameBox,
  routesOf,
  segmentsOf,
  symbolBox,
  turned,
  wrap,
  type Segment,
} from '../../../components/circuit/layout.ts'
import type { Box } from '../../../components/circuit/symbols/geometry.ts'
import { circuit, circuitIds, circuits, type CircuitId } from './circuits.ts'

/** Half of the heaviest line, so that no word touches it. */
const CLEAR_OF_LINES = 3

/** The lines, labels, words and parts of a sheet. */
function sheetOf(id: CircuitId) {
  const { [id]: sheet } = circuits
  return {
    lines: sheet.connections.flatMap((connection) =>
      routesOf(sheet, connection).map((route) => ({ connection, segments: segmentsOf(route) })),
    ),
    labels: sheet.elements.map((element) => ({ name: `label of ${element.id}`, box: labelBox(element) })),
    names: sheet.connections.flatMap(({ name }) =>
      name ? [{ name: `words ${name.text}`, box: nameBox(name) }] : [],
    ),
    drawn: sheet.elements.map((element) => ({ name: element.id, box: symbolBox(element) })),
  }
}

const overlap = (a: Box, b: Box) =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom

const boxOf = ([[x1, y1], [x2, y2]]: Segment, margin: number): Box => ({
  left: Math.min(x1, x2) - margin,
  right: Math.max(x1, x2) + margin,
  top: Math.min(y1, y2) - margin,
  bottom: Math.max(y1, y2) + margin,
})

/** Every pair of these whose boxes overlap, by name. */
function overlapping(boxes: { name: string; box: Box }[]): string[] {
  return boxes.flatMap((a, index) =>
    boxes.slice(index + 1).flatMap((b) => (overlap(a.box, b.box) ? [`${a.name} and ${b.name}`] : [])),
  )
}

describe.each(circuitIds)('the sheet of %s', (id) => {
  const { lines, labels, names, drawn } = sheetOf(id)

  it('has no two parts, labels or words on the same spot', () => {
    expect(overlapping([...labels, ...names, ...drawn])).toEqual([])
  })

  it('has no line through a label or words', () => {
    const struck = [...labels, ...names].flatMap(({ name, box }) =>
      lines.flatMap(({ connection, segments }) =>
        segments.some((segment) => overlap(box, boxOf(segment, CLEAR_OF_LINES)))
          ? [`${connection.from} to ${connection.to} through ${name}`]
          : [],
      ),
    )
    expect(struck).toEqual([])
  })

  it('has no line through a part', () => {
    const struck = drawn.flatMap(({ name, box }) =>
      lines.flatMap(({ connection: { from, to }, segments }) => {
        const own = [from, to].some((end) => end.startsWith(`${name}.`))
        return !own && segments.some((segment) => overlap(box, boxOf(segment, 0)))
          ? [`${from} to ${to} through ${name}`]
          : []
      }),
    )
    // The pilot line of a spring valve is drawn from the very line that ends at the valve.
    expect(struck).toEqual([])
  })

  it('has no lines that cross', () => {
    const pieces = lines.flatMap(({ connection, segments }) =>
      segments.map((segment) => ({
        name: `${connection.from} to ${connection.to}`,
        box: boxOf(segment, 0.01),
      })),
    )
    const meet = pieces.flatMap((a, index) =>
      pieces.slice(index + 1).flatMap((b) => {
        if (a.name === b.name || !overlap(a.box, b.box)) return []
        const width = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left)
        const height = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top)
        const atEnd = [a, b].every(({ box }) => touchesEnd(box, a.box, b.box))
        return Math.max(width, height) < 0.1 && atEnd ? [] : [`${a.name} and ${b.name}`]
      }),
    )
    expect(meet).toEqual([])
  })

  it('draws its letters at 12 px or more where the page shows it smallest', () => {
    // components/circuit/circuit.css: a sheet is never narrower than 46rem, with 6 units of edge on either side.
    expect((15 * 46 * 16) / (circuits[id].size.width * 20 + 12)).toBeGreaterThanOrEqual(11.95)
  })
})

describe('the way of the fuel', () => {
  it('leads in the PQ-12 from the tank through 1 to 13 and back to the tank', () => {
    const way = circuit.elements.filter((element) => element.number !== undefined)
    let at = 'tank'
    const walked = way.map((_, index) => {
      const reached = downstreamOf(circuit, at)
      const next = way.find(({ id, number }) => reached.has(id) && number === ((index + 1) % way.length) + 1)
      at = next?.id ?? 'nowhere'
      return at
    })
    expect(walked).toEqual([
      'foot-valve',
      'suction-strainer',
      'supply-pump',
      'fuel-heater',
      'primary-filter',
      'secondary-filters',
      'supply-header',
      'injectors',
      'return-header',
      'back-pressure-valve',
      'return-glass',
      'return-line',
      'tank',
    ])
  })

  it('leads in the PB-8 from the return back to the mixing column, and only the surplus of the feed pump to the tank', () => {
    const { 'pb-8': booster } = circuits
    expect(downstreamOf(booster, 'return-line')).toEqual(new Set(['mixing-column']))
    expect(downstreamOf(booster, 'feed-pressure-valve')).toEqual(new Set(['tank']))
    expect(downstreamOf(booster, 'booster-relief-valve')).toEqual(new Set(['mixing-column']))
  })

  it('joins the bypass before the secondary filters and its drain before the common return line', () => {
    expect(downstreamOf(circuit, 'primary-filter')).toContain('bypass-valve')
    expect(downstreamOf(circuit, 'bypass-valve')).toEqual(new Set(['bypass-glass']))
    expect(downstreamOf(circuit, 'bypass-glass')).toEqual(new Set(['return-line']))
    expect(downstreamOf(circuit, 'pump-relief-valve')).toEqual(new Set(['tank']))
  })

  it('draws a line to and from each of the twelve injectors', () => {
    for (const from of ['supply-header.out', 'injectors.out']) {
      const routes = sheetOf('pq-12').lines.filter(({ connection }) => connection.from === from)
      expect(routes).toHaveLength(12)
    }
  })
})

/** Where two pieces of line touch, the place lies at an end of this one. */
function touchesEnd(box: Box, a: Box, b: Box): boolean {
  const x = (Math.max(a.left, b.left) + Math.min(a.right, b.right)) / 2
  const y = (Math.max(a.top, b.top) + Math.min(a.bottom, b.bottom)) / 2
  const near = (p: number, q: number) => Math.abs(p - q) < 0.1
  return (near(x, box.left) || near(x, box.right)) && (near(y, box.top) || near(y, box.bottom))
}

describe('what cannot be drawn is named', () => {
  it('a slanted line', () => {
    const connections = circuit.connections.map((connection) =>
      connection.from === 'return-glass.out' ? { ...connection, via: [] } : connection,
    )
    expect(drawingProblems({ ...circuit, connections })).toEqual([
      {
        path: ['connections', connections.findIndex(({ from }) => from === 'return-glass.out'), 'via'],
        message: expect.stringMatching(
          /^the line runs slanted from \[39\.6, [\d.]+\] to \[20\.1, 32\.5\]; lines run/,
        ),
      },
    ])
  })

  it('a row of parts that does not match the header before it', () => {
    const elements = circuit.elements.map((element) =>
      element.id === 'injectors' ? { ...element, count: 8 } : element,
    )
    const messages = drawingProblems({ ...circuit, elements }).map(({ message }) => message)
    expect(messages).toContain(
      'supply-header.out has 12 lines and injectors.in has 8; give both the same count',
    )
  })

  it('a part outside the sheet', () => {
    const elements = circuit.elements.map((element) =>
      element.id === 'tank' ? { ...element, at: [1, 1] as [number, number] } : element,
    )
    const connections = circuit.connections.filter(({ from, to }) => !`${from} ${to}`.includes('tank.'))
    expect(drawingProblems({ ...circuit, elements, connections })).toEqual([
      {
        path: ['elements', 0, 'at'],
        message: 'tank reaches outside the sheet of 45 by 38 steps; move it or widen the size',
      },
    ])
  })
})

describe('small parts', () => {
  it('turns clockwise, y pointing down', () => {
    expect(turned([1, 0], 90)).toEqual([0, 1])
    expect(turned([1, 0], 180)).toEqual([-1, 0])
    expect(turned([1, 0], 270)).toEqual([0, -1])
    expect(turned([1, 2], 0)).toEqual([1, 2])
  })

  it('breaks a label at its spaces only', () => {
    expect(wrap('Back-pressure valve', 14)).toEqual(['Back-pressure', 'valve'])
    expect(wrap('Strainer', 3)).toEqual(['Strainer'])
    expect(wrap('a b c', 3)).toEqual(['a b', 'c'])
  })

  it('marks the way with numbers and the rest with letters', () => {
    const marks = marksOf(circuit.elements)
    expect(marks.get('tank')).toBe('1')
    expect(marks.get('return-line')).toBe('13')
    expect(marks.get('pump-motor')).toBe('A')
    expect(new Set(marks.values()).size).toBe(circuit.elements.length)
  })
})
