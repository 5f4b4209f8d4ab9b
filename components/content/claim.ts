import { operatingStates, type OperatingState } from '../../calculators/circuit/types.ts'
import { readFigure } from '../../calculators/quantity/figure.ts'
import type { KindId } from '../../calculators/quantity/types.ts'
import type { ClaimScope } from './claim-scope.ts'

/** How a reading can stand to the one that it is held against. */
export const directions = ['lower', 'higher', 'unchanged', 'more changed', 'less changed'] as const

/** How a glass can look, by itself or against what it is held against. */
export const looks = [
  'clear',
  'full',
  'bubbling',
  'free of bubbles',
  'part full',
  'empty',
  'running from above',
  'rising from its drain',
  'milky',
  'dirty',
  'unchanged',
  'more bubbling',
  'less bubbling',
] as const

/** What the model can remark of a part. */
export const conditions = ['open', 'not open', 'rattling', 'not rattling', 'running dry'] as const

const compared: ReadonlySet<string> = new Set([...directions, 'more bubbling', 'less bubbling'])

/** Readings that there are only while the engine runs. */
const OF_THE_ENGINE = /^(rack|power|exhaust-\d+)$/

/** The gravest is the one that the bench is set to: there most is to be seen. */
const USUAL_SEVERITIES = [0.5, 0.75, 1]

const ICE_POINT = 273.15

export type Subject =
  | { readonly of: 'reading'; readonly ids: readonly string[]; readonly is: (typeof directions)[number] }
  | { readonly of: 'glass'; readonly id: string; readonly is: (typeof looks)[number] }
  | { readonly of: 'part'; readonly id: string; readonly is: (typeof conditions)[number] }

/** What words of an article say of a circuit, so that the model can be asked whether it is so. */
export interface Claim {
  readonly circuit: string
  readonly states: readonly OperatingState[]
  /** Ids of the faults that are there together; none where the claim is of health. */
  readonly faults: readonly string[]
  /** Each is tried, for all faults alike; none where there is no fault. */
  readonly severities: readonly number[]
  /** What is not as usual, as the bench's address writes it: 'fuel', 'tank' and 'air' in °C, 'level' in per cent. */
  readonly changed: Readonly<Record<string, string>>
  readonly subject: Subject
  /** What it is held against, where that is not the circuit without the faults, or with its usual conditions. */
  readonly than?: { readonly of: 'state' | 'fault' | 'reading'; readonly id: string }
}

export type ClaimReading =
  { readonly ok: true; readonly claim: Claim } | { readonly ok: false; readonly problems: readonly string[] }

/** Attributes as an article writes them, all of them texts. */
export type ClaimAttributes = Readonly<Record<string, string | undefined>>

const attributes = {
  circuit: 'one of content/circuits',
  state: 'one or several of the states of the engine',
  fault: 'one or several of the faults, which are there together',
  severity: 'one or several of 0 to 1, each of which is tried',
  fuel: 'one of the fuels',
  tank: 'a temperature',
  air: 'a temperature',
  level: 'a share of the tank',
  reading: 'one or several gauges',
  glass: 'a glass',
  part: 'a part of which the model remarks something',
  is: 'what is said of it',
  than: 'a state, a fault or a reading',
}

const listOf = (written: string | undefined): readonly string[] =>
  (written ?? '')
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '')

/**
 * A claim out of the attributes of its tag.
 * @param written as the article has them
 * @param scopeOf what there is in a circuit; nothing where there is no such circuit
 * @returns the claim, or a sentence for everything that is wrong, each with what is allowed
 */
export function readClaim(
  written: ClaimAttributes,
  scopeOf: (circuit: string) => ClaimScope | undefined,
): ClaimReading {
  const problems: string[] = []
  const refuse = (attribute: string, value: string, allowed: string): void => {
    problems.push(`${attribute}: «${value}» is not known; allowed: ${allowed}`)
  }
  for (const attribute of Object.keys(written))
    if (!Object.hasOwn(attributes, attribute))
      refuse('attribute', attribute, Object.keys(attributes).join(', '))
  const circuit = written['circuit'] ?? 'pq-12'
  const scope = scopeOf(circuit)
  if (!scope) return { ok: false, problems: [`circuit: «${circuit}» is not an id of content/circuits`] }

  const some = <Id extends string>(attribute: string, ids: readonly string[], allowed: readonly Id[]): Id[] =>
    ids.flatMap((id) => {
      const found = allowed.find((one) => one === id)
      if (found === undefined) refuse(attribute, id, allowed.join(', '))
      return found === undefined ? [] : [found]
    })
  const figure = (attribute: string, kind: KindId, [least, most]: readonly [number, number]) => {
    const text = written[attribute]
    if (text === undefined) return undefined
    const reading = readFigure(text, kind)
    const inside = reading.ok && reading.si >= least && reading.si <= most
    if (!inside)
      refuse(attribute, text, `a figure with its unit, within the limits of the bench of ${circuit}`)
    return inside ? reading.si : undefined
  }

  const states = some('state', listOf(written['state']), operatingStates)
  if (written['state'] === undefined)
    problems.push(`state is missing; allowed: ${operatingStates.join(', ')}`)
  const faults = listOf(written['fault']).filter((id) => {
    const why = scope.faultProblem(id)
    if (why !== undefined) problems.push(`fault: ${why}`)
    return why === undefined
  })
  const severities = severitiesOf(written, faults, problems)
  const changed: Record<string, string> = {}
  const [fuel] = some('fuel', listOf(written['fuel']), scope.fuels)
  if (fuel !== undefined) changed['fuel'] = fuel
  for (const [attribute, limits] of [
    ['tank', scope.tankTemperature],
    ['air', scope.ambientTemperature],
  ] as const) {
    const value = figure(attribute, 'temperature', limits)
    if (value !== undefined) changed[attribute] = plain(value - ICE_POINT)
  }
  const level = figure('level', 'ratio', [0, 1])
  if (level !== undefined) changed['level'] = plain(100 * level)

  const subject = subjectOf(written, scope, some, problems)
  if (
    subject?.of === 'reading' &&
    states.includes('priming') &&
    subject.ids.some((id) => OF_THE_ENGINE.test(id))
  )
    problems.push(
      'state: while priming the engine stands, and has no such reading; allowed: idle, part, full',
    )
  const than = thanOf(written['than'], scope, problems)
  const alone = faults.length === 0 && Object.keys(changed).length === 0 && than === undefined
  if (problems.length === 0 && subject && alone && compared.has(subject.is))
    problems.push(`is: «${subject.is}» than what? allowed: with a fault, a changed condition, or than="…"`)
  if (problems.length > 0 || !subject) return { ok: false, problems }
  return {
    ok: true,
    claim: { circuit, states, faults, severities, changed, subject, ...(than ? { than } : {}) },
  }
}

function severitiesOf(written: ClaimAttributes, faults: readonly string[], problems: string[]): number[] {
  const given = listOf(written['severity'])
  const severities = given.map(Number)
  if (severities.some((severity) => !(severity > 0 && severity <= 1)))
    problems.push(`severity: «${written['severity']}» is not known; allowed: above 0, up to 1`)
  if (given.length > 0 && faults.length === 0)
    problems.push('severity: there is no fault; allowed: with fault="…"')
  if (faults.length === 0) return []
  return (given.length > 0 ? severities : USUAL_SEVERITIES).toSorted((one, other) => one - other)
}

function subjectOf(
  written: ClaimAttributes,
  scope: ClaimScope,
  some: <Id extends string>(attribute: string, ids: readonly string[], allowed: readonly Id[]) => Id[],
  problems: string[],
): Subject | undefined {
  const named = (['reading', 'glass', 'part'] as const).filter((of) => written[of] !== undefined)
  const [of] = named
  if (of === undefined || named.length > 1) {
    problems.push(
      `it speaks of ${named.join(' and ') || 'nothing'}; allowed: exactly one of reading, glass, part`,
    )
    return undefined
  }
  const said = [written['is'] ?? '']
  if (of === 'reading') {
    const ids = some('reading', listOf(written['reading']), scope.readings)
    const [is] = some('is', said, directions)
    return is === undefined ? undefined : { of, ids, is }
  }
  const [id] = some(of, [written[of] ?? ''], of === 'glass' ? scope.glasses : scope.parts)
  if (id === undefined) return undefined
  if (of === 'glass') {
    const [is] = some('is', said, looks)
    return is === undefined ? undefined : { of, id, is }
  }
  const [is] = some('is', said, conditions)
  return is === undefined ? undefined : { of, id, is }
}

function thanOf(id: string | undefined, scope: ClaimScope, problems: string[]): Claim['than'] {
  if (id === undefined) return undefined
  if (operatingStates.some((state) => state === id)) return { of: 'state', id }
  if (scope.readings.includes(id)) return { of: 'reading', id }
  const why = scope.faultProblem(id)
  if (why === undefined) return { of: 'fault', id }
  problems.push(`than: ${why}; also allowed: ${operatingStates.join(', ')}, ${scope.readings.join(', ')}`)
  return undefined
}

const plain = (value: number): string => String(Number(value.toFixed(2)))

/** One try of a claim: a state of the engine, and each fault with its severity. */
export interface Try {
  readonly state: OperatingState
  readonly faults: Readonly<Record<string, number>>
  readonly changed: Readonly<Record<string, string>>
}

/** The try that shows most: in the first of its states, with its faults as grave as they are said to be. */
export function gravest({ states, faults, severities, changed }: Claim): Try {
  const severity = severities.at(-1) ?? 0
  return {
    state: states[0] ?? 'part',
    faults: Object.fromEntries(faults.map((id) => [id, severity])),
    changed,
  }
}

/** The part of the bench's address behind its question mark that sets it to a try, and to the part spoken of. */
export function queryOf({ state, faults, changed }: Try, part?: string): string {
  return new URLSearchParams([
    ['v', '1'],
    ['state', state],
    ...Object.entries(changed),
    ...Object.entries(faults).map(([id, severity]): [string, string] => [`fault.${id}`, plain(severity)]),
    ...(part === undefined ? [] : [['part', part]]),
  ]).toString()
}

/** The part of the drawing that a claim speaks of; none where it is a reading of the engine as a whole. */
export function partOf({ subject }: Claim, scope: ClaimScope): string | undefined {
  const id = subject.of === 'reading' ? subject.ids[0] : subject.id
  return id !== undefined && scope.parts.includes(id) ? id : undefined
}
