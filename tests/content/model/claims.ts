import type { CircuitState, GlassView, Reading } from '../../../calculators/circuit/types.ts'
import { readAddress } from '../../../components/circuit/bench/address.ts'
import { solverOf } from '../../../components/circuit/bench/solver.ts'
import type { BenchData } from '../../../components/circuit/bench/types.ts'
import { queryOf, type Claim, type Try } from '../../../components/content/claim.ts'
import { benchData } from '../../unit/bench/bench.ts'
import type { CircuitId } from '../../unit/circuit/circuits.ts'

/** The least difference of gas that an eye tells: what the model calls visible at all. */
const GAS_TOLD = 0.003

const benches = new Map<string, { data: BenchData; solve: ReturnType<typeof solverOf> }>()
const solved = new Map<string, CircuitState>()

/** What the bench shows at an address, read as a reader's browser reads it. */
export function shownAt(circuit: string, query: string): CircuitState {
  const key = `${circuit}?${query}`
  const known = solved.get(key)
  if (known) return known
  const bench = benches.get(circuit) ?? {
    data: benchData(circuit as CircuitId),
    solve: solverOf(benchData(circuit as CircuitId)),
  }
  benches.set(circuit, bench)
  const { state, problems } = readAddress(bench.data, query)
  if (problems.length > 0) throw new Error(`${key}: ${problems.join(' ')}`)
  const now = bench.solve(state.setting)
  if (!now.ok) throw new Error(`${key}: ${now.reason}`)
  solved.set(key, now)
  return now
}

/** Each state with each severity. */
export const triesOf = ({ states, faults, severities, changed }: Claim): Try[] =>
  states.flatMap((state) =>
    (severities.length > 0 ? severities : [0]).map((severity) => ({
      state,
      faults: Object.fromEntries(faults.map((id) => [id, severity])),
      changed,
    })),
  )

/** What a try is held against. */
function against({ than, faults }: Claim, tried: Try): Try {
  if (than?.of === 'state') return { ...tried, state: than.id as Try['state'] }
  if (than?.of === 'fault')
    return { ...tried, faults: { [than.id]: Math.max(...Object.values(tried.faults)) } }
  if (than?.of === 'reading') return tried
  return faults.length > 0 ? { ...tried, faults: {} } : { ...tried, changed: {} }
}

const inHealth = (tried: Try): Try => ({ ...tried, faults: {}, changed: {} })

function readingOf({ readings }: CircuitState, id: string): Reading {
  const found = readings.find((one) => one.id === id)
  if (!found) throw new Error(`there is no reading ${id} in this state`)
  return found
}

function glassOf({ glasses }: CircuitState, id: string): GlassView {
  const found = glasses.find(({ part }) => part === id)
  if (!found) throw new Error(`there is no glass ${id}`)
  return found
}

/** A remark of the model on a part that says it of the part. */
export const remarked = {
  open: /is open\.$/,
  rattling: /rattles/,
  'running dry': /runs dry/,
} as const

const bubbling = ({ words }: GlassView): boolean => words.includes('with bubbles')

function looksLike(look: string, now: GlassView, other: GlassView): boolean {
  switch (look) {
    case 'clear':
      return now.words === 'full and clear'
    case 'full':
      return now.look.startsWith('full')
    case 'part full':
    case 'empty':
      return now.look === look
    case 'bubbling':
      return bubbling(now)
    case 'free of bubbles':
      return !bubbling(now)
    case 'running from above':
      return now.from === 'valve'
    case 'rising from its drain':
      return now.from === 'drain'
    case 'milky':
      return now.milky
    case 'dirty':
      return now.words.includes('dirt')
    case 'unchanged':
      return now.words === other.words
    case 'more bubbling':
      return bubbling(now) && now.gas - other.gas > GAS_TOLD
    case 'less bubbling':
      return bubbling(other) && other.gas - now.gas > GAS_TOLD
    default:
      throw new Error(`${look} is no look`)
  }
}

/** Whether it is so by more than what either instrument may be off, and unchanged within that. */
function stands(is: string, now: Reading, other: Reading, far: readonly [number, number]): boolean {
  const told = Math.max(now.accuracy, other.accuracy)
  const [change, otherChange] = far
  switch (is) {
    case 'lower':
      return other.value - now.value > told
    case 'higher':
      return now.value - other.value > told
    case 'unchanged':
      return Math.abs(now.value - other.value) <= told
    case 'more changed':
      return change - otherChange > told
    case 'less changed':
      return otherChange - change > told
    default:
      throw new Error(`${is} is no direction`)
  }
}

const said = ({ value, accuracy, kind }: Reading) =>
  `${value.toPrecision(5)} ± ${accuracy.toPrecision(2)} (${kind}, SI)`

/**
 * Where the model does not agree with a claim.
 * @returns a line for each try that fails, with what the model shows; none where the claim holds
 */
export function disagreements(claim: Claim): string[] {
  const { circuit, subject, than } = claim
  return triesOf(claim).flatMap((tried) => {
    const other = against(claim, tried)
    const [now, held, health, otherHealth] = [tried, other, inHealth(tried), inHealth(other)].map((one) =>
      shownAt(circuit, queryOf(one)),
    )
    if (!now || !held || !health || !otherHealth) throw new Error('not solved')
    const at = `${queryOf(tried)}: `
    if (subject.of === 'glass') {
      const view = glassOf(now, subject.id)
      return looksLike(subject.is, view, glassOf(held, subject.id))
        ? []
        : [`${at}${subject.id} is ${view.words}, gas ${view.gas.toPrecision(2)}, from ${view.from}`]
    }
    if (subject.of === 'part') {
      const texts = now.remarks.filter(({ part }) => part === subject.id).map(({ text }) => text)
      const wanted = !subject.is.startsWith('not ')
      const pattern = remarked[subject.is.replace('not ', '') as keyof typeof remarked]
      return texts.some((text) => pattern.test(text)) === wanted
        ? []
        : [`${at}${subject.id}: ${texts.join(' ') || 'no remark'}`]
    }
    return subject.ids.flatMap((id) => {
      const read = readingOf(now, id)
      const beside = than?.of === 'reading' ? readingOf(now, than.id) : readingOf(held, id)
      if (read.kind !== beside.kind) throw new Error(`${id} is a ${read.kind}, ${beside.id} a ${beside.kind}`)
      const moved = (reading: Reading, usual: CircuitState) =>
        Math.abs(reading.value - readingOf(usual, reading.id).value)
      const far = [moved(read, health), moved(beside, otherHealth)] as const
      return stands(subject.is, read, beside, far)
        ? []
        : [
            `${at}${id} ${said(read)}, held against ${said(beside)}; ${subject.is.includes('changed') ? `moved ${far.map((one) => one.toPrecision(3)).join(' and ')}` : ''}`,
          ]
    })
  })
}
