import { describe, expect, it } from 'vitest'
import { operatingStates } from '../../../calculators/circuit/types.ts'
import { labelBox, nameBox, routesOf, segmentsOf, symbolBox } from '../../../components/circuit/layout.ts'
import { usualSetting } from '../../../components/circuit/bench/setting.ts'
import { sheetNotes } from '../../../components/circuit/bench/sheet-notes.ts'
import { solverOf } from '../../../components/circuit/bench/solver.ts'
import type { Box } from '../../../components/circuit/symbols/geometry.ts'
import { circuitIds } from '../circuit/circuits.ts'
import { benchData, pq12, set } from './bench.ts'

/** Half of the widest line of a circuit that runs. */
const CLEAR_OF_LINES = 4.5

const overlap = (a: Box, b: Box) =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom

describe.each(circuitIds)('the sheet of %s as it runs', (id) => {
  const data = benchData(id)
  const { circuit, faults } = data
  const solve = solverOf(data)

  /** The longest note that any fault brings to each glass and instrument, in any state and unit. */
  const longest = new Map<string, string>()
  for (const state of operatingStates) {
    const setting = { ...usualSetting(data), state }
    const health = solve(setting)
    if (!health.ok) throw new Error(health.reason)
    for (const severity of [0.3, 0.7, 1])
      for (const fault of faults) {
        const now = solve({ ...setting, faults: { [fault.id]: severity } })
        if (!now.ok) continue
        for (const system of ['si', 'us'] as const)
          for (const [part, note] of sheetNotes(data, now, health, system))
            if (note.length > (longest.get(part)?.length ?? 0)) longest.set(part, note)
      }
  }
  const labels = circuit.elements.map((element) => {
    const note = longest.get(element.id)
    return {
      name: `«${note ?? element.label}» of ${element.id}`,
      box: labelBox(note === undefined ? element : { ...element, note }, note !== undefined),
    }
  })

  it('no reading covers a part, a label or the words of a line', () => {
    const others = [
      ...circuit.elements.map((element) => ({ name: element.id, box: symbolBox(element) })),
      ...circuit.connections.flatMap(({ name }) => (name ? [{ name: name.text, box: nameBox(name) }] : [])),
    ]
    const covered = labels.flatMap((label, index) =>
      [...others, ...labels.slice(index + 1)]
        .filter(({ box }) => overlap(label.box, box))
        .map(({ name }) => `${label.name} and ${name}`),
    )
    expect(covered).toEqual([])
  })

  it('no line runs through a reading', () => {
    const struck = circuit.connections.flatMap((connection) =>
      routesOf(circuit, connection).flatMap((route) =>
        segmentsOf(route).flatMap(([[x1, y1], [x2, y2]]) => {
          const box = {
            left: Math.min(x1, x2) - CLEAR_OF_LINES,
            right: Math.max(x1, x2) + CLEAR_OF_LINES,
            top: Math.min(y1, y2) - CLEAR_OF_LINES,
            bottom: Math.max(y1, y2) + CLEAR_OF_LINES,
          }
          return labels
            .filter((label) => overlap(label.box, box))
            .map(({ name }) => `${connection.from} to ${connection.to} through ${name}`)
        }),
      ),
    )
    expect(struck).toEqual([])
  })

  it('every reading stands on the sheet', () => {
    const { width, height } = circuit.size
    // components/circuit/CircuitDrawing.tsx: a sheet that runs has this much more room at its sides.
    const [side, edge] = [36, 6]
    const outside = labels.filter(
      ({ box }) =>
        box.left < -side ||
        box.right > width * 20 + side ||
        box.top < -edge ||
        box.bottom > height * 20 + edge,
    )
    expect(outside.map(({ name }) => name)).toEqual([])
  })
})

describe('a glass on the sheet', () => {
  const solve = solverOf(pq12)
  const seenWith = (fault: string, severity: number) => {
    const setting = set({ state: 'priming' })
    const [health, now] = [solve(setting), solve({ ...setting, faults: { [fault]: severity } })]
    if (!health.ok || !now.ok) throw new Error('no state')
    return { notes: sheetNotes(pq12, now, health, 'si'), glasses: now.glasses }
  }

  it.each([
    ['secondary-filters-plugged', 1, 'bypass-glass', 'from above'],
    ['return-line-squeezed', 1, 'bypass-glass', 'from its drain'],
    ['water-in-tank', 1, 'return-glass', 'full, milky'],
    ['secondary-filters-plugged', 1, 'return-glass', 'full and clear'],
    ['pump-worn', 1, 'bypass-glass', 'empty'],
  ])('with %s at %d the %s says «%s»', (fault, severity, part, note) => {
    const { notes, glasses } = seenWith(fault, severity)
    expect(notes.get(part)).toBe(note)
    expect(glasses.find((glass) => glass.part === part)?.words).toContain(note)
  })
})
