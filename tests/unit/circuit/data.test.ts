import { globSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { describe, expect, it } from 'vitest'
import { circuit as schema } from '../../../components/content/schemas.ts'
import { circuit, rawCircuit } from './circuits.ts'

/** Path and message of each issue that a changed copy of the file raises. */
function issuesAfter(change: (raw: ReturnType<typeof rawCircuit>) => void): string[] {
  const raw = rawCircuit()
  change(raw)
  const result = schema.safeParse(raw)
  return result.success ? [] : result.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`)
}

describe('the data of the PQ-12', () => {
  it('holds the parts by the ids that faults and articles use', () => {
    const ids = `tank suction-strainer supply-pump pump-motor pump-relief-valve fuel-heater primary-filter
      secondary-filters bypass-valve bypass-glass supply-header injectors return-header back-pressure-valve
      return-glass return-line suction-vacuum-gauge primary-drop-gauge secondary-drop-gauge header-gauge
      header-temperature`
    expect(circuit.elements.map(({ id }) => id)).toEqual(ids.split(/\s+/))
  })

  it('types no figure into its words', () => {
    const typed = circuit.elements.filter(({ purpose, inHealth }) => /\d/.test(`${purpose} ${inHealth}`))
    expect(typed.map(({ id }) => id)).toEqual([])
  })

  it('names only set points of its plant', () => {
    const plant = parse(readFileSync(`content/plants/${circuit.plant}.yaml`, 'utf8')) as {
      setPoints: Record<string, unknown>
    }
    const known = Object.keys(plant.setPoints)
    expect(
      circuit.elements.flatMap(({ setPoints }) => setPoints).filter((id) => !known.includes(id)),
    ).toEqual([])
  })
})

describe('the faults', () => {
  it.each(globSync('content/faults/*.yaml'))('%s sits at a part of the circuit', (file) => {
    const fault = parse(readFileSync(file, 'utf8')) as { circuit: string; element: string }
    if (fault.circuit !== 'pq-12') return
    expect(circuit.elements.map(({ id }) => id)).toContain(fault.element)
  })
})

describe('a mistake in the file stops the build with its place and what is allowed', () => {
  it('an unknown symbol', () => {
    const [issue] = issuesAfter((raw) => Object.assign(raw.elements[1] ?? {}, { symbol: 'sieve' }))
    expect(issue).toMatch(
      /^elements\.1\.symbol: «sieve» .*components\/circuit\/symbols; allowed: reservoir, filter, /,
    )
  })

  it('an unknown port', () => {
    const [issue] = issuesAfter((raw) => Object.assign(raw.connections[0] ?? {}, { from: 'tank.outlet' }))
    expect(issue).toBe('connections.0.from: «outlet» is no port of tank; allowed: out, relief, return')
  })

  it('an unknown set point', () => {
    const [issue] = issuesAfter((raw) => Object.assign(raw.elements[0] ?? {}, { setPoints: ['tank-size'] }))
    expect(issue).toMatch(
      /^elements\.0\.setPoints\.0: «tank-size» is no set point of content\/plants\/pq-12\.yaml; allowed: rated-power, /,
    )
  })

  it('a field that does not exist', () => {
    expect(issuesAfter((raw) => Object.assign(raw.elements[0] ?? {}, { colour: 'red' }))).toEqual([
      expect.stringContaining('colour'),
    ])
  })
})
