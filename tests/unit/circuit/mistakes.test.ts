import { describe, expect, it } from 'vitest'
import { circuit as schema, fault } from '../../../components/content/schemas.ts'
import { rawCircuit } from './circuits.ts'

type Raw = ReturnType<typeof rawCircuit>
type Change = (raw: Raw) => void

/** Path and message of each issue that a changed copy of the PQ-12's file raises. */
function issuesAfter(change: Change): string[] {
  const raw = rawCircuit('pq-12')
  change(raw)
  const result = schema.safeParse(raw)
  return result.success ? [] : result.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`)
}

const elementOf = (raw: Raw, id: string) => raw.elements.find((element) => element.id === id)
const connectionTo = (raw: Raw, end: string) => raw.connections.find(({ to }) => to === end)

/** Gives a part's model other figures. */
const withModel =
  (id: string, figures: Readonly<Record<string, unknown>>): Change =>
  (raw) =>
    Object.assign(elementOf(raw, id)?.model ?? {}, figures)

const withElement =
  (id: string, fields: Readonly<Record<string, unknown>>): Change =>
  (raw) =>
    Object.assign(elementOf(raw, id) ?? {}, fields)

/** A glass and a line in a ring of their own. */
const addRing: Change = (raw) => {
  const glass = elementOf(raw, 'return-glass')
  const line = elementOf(raw, 'return-line')
  if (!glass || !line) return
  const apart = { number: undefined, turn: 0 as const, height: '1 m', note: undefined }
  raw.elements.push(
    { ...glass, ...apart, id: 'ring-glass', label: 'Ring glass', at: [25, 36], labelAt: [25, 36] },
    { ...line, ...apart, id: 'ring-line', label: 'Ring line', at: [30, 36], labelAt: [30, 36] },
  )
  raw.connections.push(
    { from: 'ring-glass.out', to: 'ring-line.in', line: 'return' },
    {
      from: 'ring-line.out',
      to: 'ring-glass.in',
      line: 'return',
      via: [
        [31, 37],
        [24, 37],
      ],
    },
  )
}

const mistakes: [string, Change, RegExp][] = [
  [
    'an open end',
    (raw) =>
      void raw.connections.splice(
        raw.connections.findIndex(({ to }) => to === 'bypass-glass.in'),
        1,
      ),
    /^elements\.\d+\.id: bypass-glass\.in is an open end; every port takes one connection$/,
  ],
  [
    'a part of the network with no fixed pressure',
    addRing,
    /^elements\.22: Ring glass is joined to no tank, so that nothing holds a pressure there; accepted: a way to a tank$/,
  ],
  [
    'a spring valve the wrong way round',
    (raw) => {
      Object.assign(connectionTo(raw, 'bypass-valve.in') ?? {}, { to: 'bypass-valve.out' })
      Object.assign(connectionTo(raw, 'bypass-glass.in') ?? {}, { from: 'bypass-valve.in' })
    },
    /^connections\.\d+\.to: «bypass-valve\.out»: Bypass valve stands the wrong way round/,
  ],
  [
    'a check valve the wrong way round',
    (raw) => {
      Object.assign(connectionTo(raw, 'foot-valve.in') ?? {}, { to: 'foot-valve.out' })
      Object.assign(connectionTo(raw, 'suction-strainer.in') ?? {}, { from: 'foot-valve.in' })
    },
    /^connections\.0\.to: «foot-valve\.out»: Foot valve stands the wrong way round/,
  ],
  [
    'a figure that is neither a figure nor a set point',
    withModel('tank', { depth: 'tank-deepness' }),
    /^elements\.0\.model\.depth: .*«tank-deepness».*; accepted: .*or the id of a set point of the plant$/,
  ],
  [
    'a set point of another kind',
    withModel('bypass-valve', { cracking: 'suction-bore' }),
    /^elements\.\d+\.model\.cracking: the set point «suction-bore» is a length; accepted: a gauge pressure/,
  ],
  [
    'a bare number',
    withModel('tank', { mouth: 0.07 }),
    /^elements\.0\.model\.mouth: «0\.07» is not a text; allowed: a number and a unit in one text/,
  ],
  [
    'a number without a unit',
    withElement('suction-strainer', { height: '0.45' }),
    /^elements\.2\.height: .*«0\.45» has no unit; accepted: /,
  ],
  [
    'a stray parameter',
    withModel('tank', { colour: '1' }),
    /^elements\.0\.model\.colour: «colour» is no parameter of a tank; accepted: depth, volume, /,
  ],
  [
    'a parameter left out',
    (raw) => {
      const { depth: _, ...rest } = elementOf(raw, 'tank')?.model ?? { kind: 'tank' as const }
      Object.assign(elementOf(raw, 'tank') ?? {}, { model: rest })
    },
    /^elements\.0\.model\.depth: nothing stands here; accepted: /,
  ],
  [
    'an unknown kind of part',
    withModel('tank', { kind: 'barrel' }),
    /^elements\.0\.model\.kind: «barrel» is not an id of .*; allowed: tank, filter, /,
  ],
  [
    'a figure that cannot be',
    withModel('return-glass', { bore: '3 m' }),
    /^elements\.\d+\.model\.bore: «3 m» is out of range; accepted: /,
  ],
  [
    'two heights at one place',
    withElement('supply-pump', { height: '2 m' }),
    /^connections\.\d+: .* m and .* m, joined without a pipe; give the line a pipe, or both one height$/,
  ],
  [
    'a stray figure of a pipe',
    (raw) => void Object.assign(connectionTo(raw, 'suction-strainer.in')?.pipe ?? {}, { material: '1' }),
    /^connections\.1\.pipe\.material: «material» is no parameter of a line; accepted: length, bore, /,
  ],
  [
    'an engine without one of its figures',
    (raw) => void Object.assign(raw.engine, { ratedPower: undefined }),
    /^engine\.ratedPower: «undefined» is not a text; allowed: /,
  ],
  [
    'usual conditions outside what one may choose',
    (raw) => void Object.assign(raw.usual, { tankTemperature: '80 degC' }),
    /^usual\.tankTemperature: «80 degC» is out of range; accepted: /,
  ],
  [
    'a range upside down',
    (raw) => void Object.assign(raw.ranges, { ambientTemperature: ['45 degC', '-25 degC'] }),
    /^ranges\.ambientTemperature: «45 degC to -25 degC» does not rise; accepted: the least first$/,
  ],
  [
    'a usual fuel that the circuit does not run on',
    (raw) => void Object.assign(raw.usual, { fuel: 'residual-380' }),
    /^usual\.fuel: «residual-380» is not among the fuels of this circuit; accepted: summer-gas-oil, /,
  ],
  [
    'a way of the fuel that leads nowhere back',
    withElement('return-line', { number: 14 }),
    /^elements\.\d+\.number: return-line is number 14; the next free place on the way is 13$/,
  ],
  [
    'an unknown symbol',
    withElement('foot-valve', { symbol: 'sieve' }),
    /^elements\.1\.symbol: «sieve» .*components\/circuit\/symbols; allowed: reservoir, /,
  ],
  [
    'an unknown port',
    (raw) => void Object.assign(raw.connections[0] ?? {}, { from: 'tank.outlet' }),
    /^connections\.0\.from: «outlet» is no port of tank; allowed: out, relief, return$/,
  ],
  [
    'an unknown set point in the words of a part',
    withElement('tank', { setPoints: ['tank-size'] }),
    /^elements\.0\.setPoints\.0: «tank-size» is no set point of content\/plants\/pq-12\.yaml; allowed: rated-power, /,
  ],
  ['a field that does not exist', withElement('tank', { colour: 'red' }), /colour/],
]

describe('a mistake in a circuit stops the build with its place and what is allowed', () => {
  it('finds nothing in the file as it stands', () => {
    expect(issuesAfter(() => undefined)).toEqual([])
  })

  it.each(mistakes)('%s', (_, change, expected) => {
    expect(issuesAfter(change)).toContainEqual(expect.stringMatching(expected))
  })
})

/** What is said of a fault whose bends are these. */
function bendIssues(bends: unknown): string[] {
  const sound = {
    title: 'Something wrong',
    description: 'A part is not as it should be.',
    frequency: 'rare',
    confirm: 'Look at it.',
    procedure: 'suction-strainer',
    cautions: ['fuel-under-pressure'],
  }
  const result = fault.safeParse({ ...sound, bends })
  return result.success ? [] : result.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`)
}

const one = (bend: unknown) => ({ 'pq-12': [bend] })
const strainer = { part: 'suction-strainer', parameter: 'loading' }

describe('a bend of a fault', () => {
  it.each([
    [one({ ...strainer, times: 40 })],
    [one({ part: 'suction-pipe', parameter: 'airHole', to: '1 mm' })],
    [one({ part: 'injectors', parameter: 'gasHole', cylinders: [7], to: '0.2 mm' })],
    [one({ part: 'injectors', parameter: 'returnLoading', cylinders: 'all', times: 30 })],
    [one({ part: 'back-pressure-valve', parameter: 'cracking', to: '100 kPa' })],
    [one({ condition: 'tankLevel', to: '5 %' })],
    [{ ...one({ condition: 'fuel', to: 'heavy-distillate' }), 'pb-8': [{ condition: 'water', to: '2 %' }] }],
  ])('%j is sound', (bends) => {
    expect(bendIssues(bends)).toEqual([])
  })

  it.each([
    [{}, /^bends: no circuit stands here; allowed: /],
    [{ 'pq-12': [] }, /^bends\.pq-12: too few; allowed: at least one bend$/],
    [{ 'pq-13': [{ condition: 'tankLevel', to: '5 %' }] }, /^bends.*pq-13/],
    [
      one({ ...strainer, part: 'strainer', times: 40 }),
      /\.0\.part: «strainer» is no part or pipe of pq-12; allowed: tank, /,
    ],
    [
      one({ ...strainer, parameter: 'plugging', times: 40 }),
      /\.0\.parameter: «plugging» is no figure of a filter; allowed: cleanDrop, /,
    ],
    [one(strainer), /^bends\.pq-12\.0: one of to and times stands here; allowed: /],
    [
      one({ ...strainer, to: '3', times: 40 }),
      /^bends\.pq-12\.0: one of to and times stands here; allowed: /,
    ],
    [one({ ...strainer, times: 1e6 }), /\.0\.times: «1000000» leads out of range; allowed: 0\.05 to 5000$/],
    [
      one({ part: 'suction-strainer', parameter: 'airHole', times: 10 }),
      /\.0\.times: «10»: there is nothing in health to multiply; allowed: to: a figure$/,
    ],
    [
      one({ part: 'suction-strainer', parameter: 'airHole', to: '4 kPa' }),
      /\.0\.to: .*«4 kPa».*; accepted: /,
    ],
    [
      one({ part: 'suction-strainer', parameter: 'airHole', to: '4 m' }),
      /\.0\.to: «4 m» is out of range; accepted: /,
    ],
    [
      one({ ...strainer, times: 40, cylinders: [1] }),
      /\.0\.cylinders: «1»: this figure is not each cylinder's own/,
    ],
    [
      one({ part: 'injectors', parameter: 'gasHole', to: '0.2 mm' }),
      /\.0\.cylinders: this field is missing; allowed: all, or numbers from 1 to 12$/,
    ],
    [
      one({ part: 'injectors', parameter: 'gasHole', cylinders: [3, 13], to: '0.2 mm' }),
      /\.0\.cylinders\.1: «13» is no cylinder or stands twice; allowed: all, or numbers from 1 to 12$/,
    ],
    [
      one({ condition: 'tankLevel', part: 'tank', to: '5 %' }),
      /\.0\.part: a bend of a condition has no part; allowed: condition with to or times$/,
    ],
    [one({ condition: 'water', to: '90 %' }), /\.0\.to: «90 %» is out of range; accepted: /],
    [
      one({ condition: 'fuel', to: 'petrol' }),
      /\.0\.to: «petrol» is not an id of content\/fuels; allowed: heavy-distillate, /,
    ],
    [one({ condition: 'fuel', times: 2 }), /\.0\.times: a fuel is no number; allowed: to: /],
  ])('%j is refused with what is allowed', (bends, expected) => {
    expect(bendIssues(bends)).toContainEqual(expect.stringMatching(expected))
  })
})
