import { render } from 'preact-render-to-string'
import { describe, expect, it } from 'vitest'
import { CircuitDrawing } from '../../../components/circuit/CircuitDrawing.tsx'
import { CircuitSymbol } from '../../../components/circuit/symbols/CircuitSymbol.tsx'
import { symbolIds } from '../../../components/circuit/symbols/geometry.ts'
import { circuit } from './circuits.ts'

const svg = render(<CircuitDrawing circuit={circuit} id="sheet" linkOf={(id) => `#part-${id}`} />)
const count = (pattern: RegExp) => [...svg.matchAll(pattern)].length

describe('the drawing as SVG', () => {
  it('draws every part once, as a link to its entry', () => {
    for (const { id } of circuit.elements) {
      expect(svg.split(`id="drawn-${id}"`)).toHaveLength(2)
      expect(svg.split(`href="#part-${id}"`)).toHaveLength(2)
    }
    expect(count(/<a /g)).toBe(circuit.elements.length)
  })

  it('draws every line in the pattern of its kind', () => {
    const of = (kind: string) => circuit.connections.filter(({ line }) => line === kind).length
    const instruments = circuit.elements.filter(({ symbol }) => /gauge$|^thermometer$/.test(symbol)).length
    // Each instrument brings the stub of its own line; the difference gauges join two lines.
    expect(count(/<path class="circuit-line circuit-line-gauge"/g)).toBe(of('gauge') + instruments)
    expect(count(/class="circuit-shaft-gap"/g)).toBe(of('shaft'))
    // The foot valve stands so close to the tank and to the strainer that the lines between have no room for an arrow.
    expect(count(/class="circuit-arrow circuit-arrow-suction"/g)).toBe(of('suction') - 2)
  })

  it('carries a title and a description, and no style attribute', () => {
    expect(svg).toContain('aria-labelledby="sheet-title"')
    expect(svg).toContain(`<title id="sheet-title">${circuit.title}</title>`)
    expect(svg).toContain('<desc id="sheet-description">')
    expect(svg).not.toMatch(/\sstyle=/)
  })

  it('names each link by mark and label', () => {
    expect(svg).toContain('aria-label="6 Primary filter"')
    expect(svg).toContain('aria-label="C Bypass valve"')
  })
})

describe('each symbol', () => {
  it.each(symbolIds)('%s keeps its shape', (symbol) => {
    expect(render(<CircuitSymbol symbol={symbol} turn={90} count={2} />)).toMatchSnapshot()
  })
})
