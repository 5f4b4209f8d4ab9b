import { describe, expect, it } from 'vitest'
import { readCircuit, type CircuitSource } from '../../../calculators/circuit/read-model.ts'
import { circuitIds, sourceOf } from './shipped.ts'

type Data = ReturnType<typeof sourceOf>
type Open<T> = T extends object ? { -readonly [Key in keyof T]: Open<T[Key]> } : T
type Circuit = Open<Data['circuit']>

/** PQ-12 with one thing done to it. */
function problemsAfter(change: (circuit: Circuit) => void): string[] {
  const source = structuredClone(sourceOf('pq-12')) as unknown as Open<CircuitSource>
  change(source.circuit as unknown as Circuit)
  const read = readCircuit(source as unknown as CircuitSource)
  return read.ok ? [] : read.problems.map(({ path, message }) => `${path.join('.')}: ${message}`)
}

const element = (circuit: Circuit, id: string) => {
  const found = circuit.elements.find((one) => one.id === id)
  if (!found) throw new Error(id)
  return found as Open<Circuit['elements'][number]> & { model: Record<string, string> }
}

const connection = (circuit: Circuit, from: string) => {
  const found = circuit.connections.find((one) => one.from === from)
  if (!found) throw new Error(from)
  return found as { from: string; to: string; pipe?: Record<string, string> | undefined }
}

it.each(circuitIds)('%s is read without a problem', (id) => {
  const read = readCircuit(sourceOf(id))
  expect(read.ok ? [] : read.problems).toEqual([])
})

describe('each mistake is named with path, value and what is accepted', () => {
  it.each<[string, (circuit: Circuit) => void, RegExp]>([
    [
      'an unknown kind',
      (circuit) => void (element(circuit, 'return-glass').model['kind'] = 'window' as never),
      /elements\.\d+\.model\.kind: «window» is no kind of part; accepted: tank, filter/,
    ],
    [
      'a missing parameter',
      (circuit) => void delete element(circuit, 'supply-pump').model['displacement'],
      /elements\.\d+\.model\.displacement: nothing stands here; accepted: a text/,
    ],
    [
      'a stray parameter',
      (circuit) => void (element(circuit, 'return-glass').model['colour'] = '3 mm'),
      /«colour» is no parameter of a sight glass; accepted: bore, dirt, hottest, airHole/,
    ],
    [
      'a figure without a unit',
      (circuit) => void (element(circuit, 'return-glass').model['bore'] = '25'),
      /model\.bore: «25» has no unit; accepted: /,
    ],
    [
      'a figure out of range',
      (circuit) => void (element(circuit, 'return-glass').model['bore'] = '3 m'),
      /model\.bore: «3 m» is out of range; accepted: 0\.005\sm to 0\.2\sm/,
    ],
    [
      'a set point of another kind',
      (circuit) => void (element(circuit, 'return-glass').model['bore'] = 'pump-speed'),
      /the set point «pump-speed» is a rotational speed; accepted: a length/,
    ],
    [
      'a valve that cracks above its full flow',
      (circuit) => void (element(circuit, 'back-pressure-valve').model['cracking'] = '300 kPa'),
      /model\.cracking: Back-pressure valve: the cracking pressure, .* is not below the pressure at full flow/,
    ],
    [
      'a fuel that is not known',
      (circuit) => void (circuit.fuels = ['coal' as never]),
      /fuels\.0: «coal» is no fuel known here; accepted: /,
    ],
    [
      'an engine figure that is missing',
      (circuit) => void delete (circuit.engine as Record<string, string>)['ratedPower'],
      /engine\.ratedPower: nothing stands here/,
    ],
    [
      'an engine that burns more at idle than at full load',
      (circuit) => void ((circuit.engine as Record<string, string>)['burntAtIdle'] = '9 L/min'),
      /engine\.burntAtIdle: «9 L\/min» is not below burntAtFull/,
    ],
    [
      'two heights at one place',
      (circuit) => void (element(circuit, 'primary-filter').height = '3 m'),
      /lies at .* m and .* at .* m, joined without a pipe; give the line a pipe, or both one height/,
    ],
    [
      'a part without a height',
      (circuit) => void delete element(circuit, 'fuel-heater').height,
      /Fuel heater has no height; accepted: its height above the floor of the tank/,
    ],
    [
      'a valve the wrong way round',
      (circuit) => {
        connection(circuit, 'return-header.out').to = 'back-pressure-valve.out'
        connection(circuit, 'back-pressure-valve.out').from = 'back-pressure-valve.in'
      },
      /connections\.\d+\.to: «back-pressure-valve\.out»: Back-pressure valve stands the wrong way round/,
    ],
    [
      'a pump the wrong way round',
      (circuit) => {
        connection(circuit, 'suction-gauge-tee.up').to = 'supply-pump.out'
        connection(circuit, 'supply-pump.out').from = 'supply-pump.in'
      },
      /«supply-pump\.out»: Supply pump stands the wrong way round/,
    ],
    [
      'a gauge without a tapping',
      (circuit) => {
        const at = circuit.connections.findIndex(({ to }) => to === 'header-gauge.line')
        circuit.connections.splice(at, 1)
      },
      /Header gauge has no tapping/,
    ],
    [
      'two sets of injectors',
      (circuit) => void circuit.elements.push({ ...element(circuit, 'injectors'), id: 'more' } as never),
      /2 parts of kind injectors; accepted: one/,
    ],
    [
      'parts that no tank holds at a pressure',
      (circuit) => {
        const pipe = { id: 'lost-pipe', label: 'Lost pipe', length: '1 m', bore: '20 mm' }
        const model = { kind: 'stop-valve', bore: '20 mm' }
        circuit.elements.push({ id: 'lost', label: 'Lost valve', count: 1, height: '1 m', model } as never)
        circuit.connections.push({ from: 'lost.out', to: 'lost.in', line: 'supply', pipe } as never)
      },
      /is joined to no tank, so that nothing holds a pressure there; accepted: a way to a tank/,
    ],
  ])('%s', (_, change, message) => {
    expect(problemsAfter(change).join('\n')).toMatch(message)
  })
})
