import type { CheckResult, PlantState, SeenReading } from '../../calculators/checks/types.ts'
import type { Course } from '../../calculators/exercise/course.ts'
import { answerMasks, openAnswers } from '../../calculators/exercise/open-answers.ts'
import type { Knowledge, Move } from '../../calculators/exercise/types.ts'

/** The hidden cause as the page tells it at the end. */
export interface Cause {
  readonly id: string
  readonly title: string
  readonly description: string
  readonly confirm: string
  readonly severity: number
  readonly procedure: { readonly title: string; readonly href: string }
}

/** What a page carries of an exercise's course; bits as hexadecimal texts. */
export interface CourseData {
  readonly start: PlantState
  /** Ids of the faults of each answer that the complaint leaves. */
  readonly answers: readonly (readonly string[])[]
  /** Place of the answer that each bit belongs to. */
  readonly cells: readonly number[]
  readonly told: readonly (Move & {
    readonly result: CheckResult
    readonly health: CheckResult
    readonly leaves: string
  })[]
  /** Checks of which the complaint already gives the answer. */
  readonly report: readonly Move[]
  readonly alike: readonly number[]
  readonly way: readonly Move[]
  readonly causes: readonly Cause[]
}

/** More digits than any instrument of the plant bears. */
const DIGITS = 6

const shortened = (value: number): number => Number(value.toPrecision(DIGITS))

function shortReading(reading: SeenReading): SeenReading {
  return { ...reading, value: shortened(reading.value), accuracy: shortened(reading.accuracy) }
}

const shortResult = (result: CheckResult): CheckResult => ({
  ...result,
  readings: result.readings.map(shortReading),
  glasses: result.glasses.map((glass) => ({
    ...glass,
    fill: shortened(glass.fill),
    gas: shortened(glass.gas),
  })),
})

const hasBit = (bits: bigint, place: number): boolean => ((bits >> BigInt(place)) & 1n) === 1n

/** Hypotheses that the complaint leaves, and of those that no check ever tells apart only the first. */
function keptHypotheses({ hypotheses, told, open }: Course): number[] {
  const patterns = new Set<string>()
  return hypotheses.flatMap(({ answer }, place) => {
    const pattern = [answer, ...told.map(({ leaves }) => (hasBit(leaves, place) ? 1 : 0))].join()
    if (!hasBit(open, place) || patterns.has(pattern)) return []
    patterns.add(pattern)
    return [place]
  })
}

/** The course as a page carries it: what the complaint has ruled out is left out. */
export function packCourse(course: Course, report: readonly Move[], causes: readonly Cause[]): CourseData {
  const kept = keptHypotheses(course)
  const open = openAnswers(course.open, course.masks)
  const bits = (leaves: bigint): string =>
    kept.reduce((sum, from, to) => (hasBit(leaves, from) ? sum | (1n << BigInt(to)) : sum), 0n).toString(16)
  return {
    start: course.start,
    answers: open.map((place) => course.answers[place]?.faults ?? []),
    cells: kept.map((place) => open.indexOf(course.hypotheses[place]?.answer ?? -1)),
    told: course.told.map(({ state, check, result, health, leaves }) => ({
      state,
      check,
      result: shortResult(result),
      health: shortResult(health),
      leaves: bits(leaves),
    })),
    report,
    alike: course.alike.map((place) => open.indexOf(place)),
    way: course.way,
    causes,
  }
}

/** What the steps of a way are reckoned from. */
export function knowledgeOf({ start, cells, told }: CourseData): Knowledge {
  return {
    start,
    masks: answerMasks(cells.map((answer) => ({ answer }))),
    open: (1n << BigInt(cells.length)) - 1n,
    told: told.map((move) => ({ ...move, leaves: BigInt(`0x${move.leaves}`) })),
  }
}

/** Letters moved by half the alphabet, and back: enough that nobody reads the cause in the page by accident. */
const veil = (text: string): string =>
  text.replace(/[a-z]/gi, (letter) => {
    const first = letter <= 'Z' ? 65 : 97
    return String.fromCharCode(((letter.charCodeAt(0) - first + 13) % 26) + first)
  })

export const veiled = (course: CourseData): string => veil(JSON.stringify(course))

/** The course from what `veiled` made of it on the same build. */
export const unveiled = (text: string): CourseData => JSON.parse(veil(text)) as CourseData
