import type { CheckResult, PlantState } from '../../calculators/checks/types.ts'
import type { Course } from '../../calculators/exercise/course.ts'
import { answerMasks, openAnswers } from '../../calculators/exercise/open-answers.ts'
import type { Knowledge, Move } from '../../calculators/exercise/types.ts'
import { packResult, unpackResult, type PackedResult } from './packed-result.ts'
import type { CircuitOffer } from './types.ts'

/** The hidden cause as the page tells it at the end. */
export interface Cause {
  readonly id: string
  readonly title: string
  readonly description: string
  readonly confirm: string
  readonly severity: number
  readonly procedure: { readonly title: string; readonly href: string }
}

interface CourseParts {
  readonly start: PlantState
  /** Ids of the faults of each answer that the complaint leaves. */
  readonly answers: readonly (readonly string[])[]
  /** Place of the answer that each bit belongs to. */
  readonly cells: readonly number[]
  /** Checks of which the complaint already gives the answer. */
  readonly report: readonly Move[]
  readonly alike: readonly number[]
  readonly way: readonly Move[]
}

/** What is hidden until the end. */
export interface Hidden {
  readonly causes: readonly Cause[]
  /** Address of the bench with the same conditions and the same faults on. */
  readonly bench: string
}

/** What a page knows of an exercise's course; bits as hexadecimal texts. */
export interface CourseData extends CourseParts, Hidden {
  readonly told: readonly (Move & {
    readonly result: CheckResult
    readonly health: CheckResult
    readonly leaves: string
  })[]
}

/** The same in few characters: state, check, bits, what it told, and what it tells in health where that differs. */
interface PackedCourse extends CourseParts, Hidden {
  readonly told: readonly (readonly [PlantState, string, string, PackedResult, PackedResult?])[]
}

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

/** The course in few characters, its causes not yet told: what the complaint has ruled out is left out. */
export function packCourse(
  course: Course,
  report: readonly Move[],
  { checks }: Pick<CircuitOffer, 'checks'>,
): string {
  const kept = keptHypotheses(course)
  const open = openAnswers(course.open, course.masks)
  const bits = (leaves: bigint): string =>
    kept.reduce((sum, from, to) => (hasBit(leaves, from) ? sum | (1n << BigInt(to)) : sum), 0n).toString(16)
  const packed: Omit<PackedCourse, keyof Hidden> = {
    start: course.start,
    answers: open.map((place) => course.answers[place]?.faults ?? []),
    cells: kept.map((place) => open.indexOf(course.hypotheses[place]?.answer ?? -1)),
    told: course.told.map(({ state, check: id, result, health, leaves }) => {
      const otherwise = checks.find((check) => check.id === id)?.otherwise
      const [seen, well] = [packResult(result, otherwise), packResult(health, otherwise)]
      const told = [state, id, bits(leaves), seen] as const
      return JSON.stringify(seen) === JSON.stringify(well) ? told : [...told, well]
    }),
    report,
    alike: course.alike.map((place) => open.indexOf(place)),
    way: course.way,
  }
  return JSON.stringify(packed)
}

/** The course as a page carries it, veiled: what packCourse made, and what is hidden. */
export function veilCourse(packed: string, hidden: Hidden): string {
  return veil(JSON.stringify({ ...(JSON.parse(packed) as Omit<PackedCourse, keyof Hidden>), ...hidden }))
}

/** The course from what `veilCourse` made of it on the same build. */
export function unpackCourse(
  text: string,
  { labels, checks }: Pick<CircuitOffer, 'labels' | 'checks'>,
): CourseData {
  const packed = JSON.parse(veil(text)) as PackedCourse
  return {
    ...packed,
    told: packed.told.map(([state, id, leaves, seen, well = seen]) => {
      const check = checks.find((candidate) => candidate.id === id)
      const [result, health] = [unpackResult(seen, labels, check), unpackResult(well, labels, check)]
      return { state, check: id, leaves, result, health }
    }),
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
function veil(text: string): string {
  return text.replace(/[a-z]/gi, (letter) => {
    const first = letter <= 'Z' ? 65 : 97
    return String.fromCharCode(((letter.charCodeAt(0) - first + 13) % 26) + first)
  })
}
