import { describe, expect, it } from 'vitest'
import { circuitProblems, downstreamOf, type CircuitNet } from '../../../calculators/circuit/validate.ts'

const ports: Record<string, readonly string[]> = {
  tank: ['out', 'return'],
  pump: ['in', 'out'],
  gauge: ['line'],
}
const portsOf = (symbol: string) => ports[symbol] ?? []
const messages = (net: CircuitNet) => circuitProblems(net, portsOf).map(({ message }) => message)

/** A tank and a pump with a gauge behind it: as small as a circuit can be. */
const sound: CircuitNet = {
  elements: [
    { id: 'tank', symbol: 'tank', number: 1 },
    { id: 'pump', symbol: 'pump', number: 2 },
    { id: 'gauge', symbol: 'gauge' },
  ],
  junctions: [{ id: 'tee' }],
  connections: [
    { from: 'tank.out', to: 'pump.in', line: 'suction' },
    { from: 'pump.out', to: 'tee.left', line: 'supply' },
    { from: 'tee.up', to: 'gauge.line', line: 'gauge' },
    { from: 'tee.right', to: 'tank.return', line: 'return' },
  ],
}

/** The sound circuit with one connection put differently. */
function withConnection(index: number, change: Partial<CircuitNet['connections'][number]>): CircuitNet {
  return {
    ...sound,
    connections: sound.connections.map((connection, at) =>
      at === index ? { ...connection, ...change } : connection,
    ),
  }
}

describe('what is wrong with a circuit is named', () => {
  it('finds nothing in a sound one', () => {
    expect(circuitProblems(sound, portsOf)).toEqual([])
  })

  it('an end at no element, with what is allowed', () => {
    expect(circuitProblems(withConnection(0, { to: 'pomp.in' }), portsOf)).toEqual([
      {
        path: ['connections', 0, 'to'],
        message: '«pomp» is no element or junction of this circuit; allowed: tank, pump, gauge, tee',
      },
    ])
  })

  it('an end at no port of its element, with what is allowed', () => {
    expect(messages(withConnection(0, { to: 'pump.inlet' }))).toEqual([
      '«inlet» is no port of pump; allowed: in, out',
    ])
    expect(messages(withConnection(1, { to: 'tee.west' }))).toEqual([
      '«west» is no port of tee; allowed: left, right, up, down',
    ])
  })

  it('two lines at one port', () => {
    expect(messages(withConnection(3, { from: 'tee.up' }))).toEqual([
      '«tee.up» already ends connection 2; put a junction where lines meet',
    ])
  })

  it('a doubled id', () => {
    expect(messages({ ...sound, junctions: [{ id: 'tee' }, { id: 'pump' }] })).toContain(
      '«pump» stands twice; an id is given to one element or junction only',
    )
  })

  it('an open end, an element on no line, and a junction of two lines', () => {
    const cut = { ...sound, connections: sound.connections.filter(({ line }) => line !== 'gauge') }
    expect(messages(cut)).toEqual([
      'gauge is on no line; connect gauge.line',
      'tee joins 2 lines; a junction joins three or four, a bend is written as via',
    ])
    const open = { ...sound, connections: sound.connections.slice(1) }
    expect(messages(open)).toEqual([
      'tank.out is an open end; every port takes one connection',
      'pump.in is an open end; every port takes one connection',
    ])
  })

  it('numbers with a gap', () => {
    const elements = sound.elements.map((element) =>
      element.id === 'pump' ? { ...element, number: 3 } : element,
    )
    expect(messages({ ...sound, elements })).toEqual([
      'pump is number 3; the next free place on the way is 2',
    ])
  })

  it('a way that the lines do not follow', () => {
    const backward = withConnection(0, { from: 'pump.in', to: 'tank.out' })
    expect(messages(backward)).toEqual(['no line leads from tank (1) to pump (2)'])
  })
})

describe('what lies downstream', () => {
  it('is reached through junctions, not through elements, and not along gauge lines', () => {
    expect(downstreamOf(sound, 'pump')).toEqual(new Set(['tank']))
    expect(downstreamOf(sound, 'tank')).toEqual(new Set(['pump']))
  })
})
