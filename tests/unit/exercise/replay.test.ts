import { describe, expect, it } from 'vitest'
import { perform } from '../../../calculators/checks/perform.ts'
import { stateMinutes } from '../../../calculators/checks/state-minutes.ts'
import type { CheckResult, PlantState } from '../../../calculators/checks/types.ts'
import { prepareCourse, type Course } from '../../../calculators/exercise/course.ts'
import { fits } from '../../../calculators/exercise/fits.ts'
import type { FaultAt, Move } from '../../../calculators/exercise/types.ts'
import { packCourse } from '../../../components/exercise/course-data.ts'
import { exercises, type ExerciseData } from '../checks/content.ts'
import { worldOf } from './world.ts'

/** What the page of an exercise may carry for its checks, before compression. */
const LARGEST_COURSE = 40_000

function courseOf(exercise: ExerciseData): Course {
  const { start, faults: hidden, told } = exercise
  return prepareCourse({ start, hidden, told }, worldOf(exercise))
}

/** What a move tells with these faults, straight from the model; nothing where there is no state. */
function tells(
  exercise: ExerciseData,
  { state, check: id }: Move,
  faults: readonly FaultAt[],
): CheckResult[] {
  const { checks, show } = worldOf(exercise)
  const check = checks.find((candidate) => candidate.id === id)
  if (check === undefined) throw new Error(`«${id}» is no check of ${exercise.circuit}`)
  const ids = faults.map(({ fault }) => fault)
  if (state === 'stopped') return [perform(check, undefined, ids)]
  const shown = show(state, faults)
  return shown.ok ? [perform(check, shown, ids)] : []
}

describe.each(exercises)('exercise $number', (exercise) => {
  const { faults: hidden, told, start, circuit } = exercise
  const { checks, states: costs } = worldOf(exercise)
  const course = courseOf(exercise)
  const allMoves = checks.flatMap(({ id, states: possible }) =>
    possible.map((state) => ({ state, check: id })),
  )

  /** Answers of which some range of severities tells at each of these moves what was seen. */
  function stillPossible(moves: readonly Move[]): Set<number> {
    const seen = moves.map((move) => {
      const [result] = tells(exercise, move, hidden)
      if (result === undefined) throw new Error(`${circuit} does not come to rest with what it hides`)
      return { move, result }
    })
    return new Set(
      course.hypotheses
        .filter(({ corners }) =>
          seen.every(({ move, result }) => {
            const would = corners.flatMap((faults) => tells(exercise, move, faults))
            return would.length === 0 || fits(result, would)
          }),
        )
        .map(({ answer }) => answer),
    )
  }

  it('hides something that a glass or a gauge shows', () => {
    const shows = allMoves.some((move) => {
      const [[seen], [health]] = [tells(exercise, move, hidden), tells(exercise, move, [])]
      const looks = (result: CheckResult | undefined) => result && { ...result, says: [] }
      return seen && health && !fits({ ...seen, says: [] }, [looks(health) ?? health])
    })
    expect(shows).toBe(true)
  })

  it('is settled by the shortest way: replayed with the model, it leaves the hidden cause and what is like it', () => {
    expect([...stillPossible([...told, ...course.way])].sort()).toEqual([...course.alike].sort())
    expect(course.alike.map((place) => [...(course.answers[place]?.faults ?? [])].sort())).toContainEqual(
      hidden.map(({ fault }) => fault).sort(),
    )
  })

  it('is not settled by its complaint alone', () => {
    expect(course.way.length).toBeGreaterThan(0)
    expect(stillPossible(told).size).toBeGreaterThan(course.alike.length)
  })

  it('is not settled by the shortest way without its last step', () => {
    expect(stillPossible([...told, ...course.way.slice(0, -1)]).size).toBeGreaterThan(course.alike.length)
  })

  it('has no single glance or gauge that would settle it in fewer minutes', () => {
    const minutes = (move: Move, from: PlantState) =>
      stateMinutes(from, move.state, costs) + (checks.find(({ id }) => id === move.check)?.minutes ?? 0)
    let [total, state] = [0, start]
    for (const move of course.way) {
      total += minutes(move, state)
      state = move.state
    }
    const quicker = allMoves.filter(
      (move) =>
        checks.find(({ id }) => id === move.check)?.finds.length === 0 && minutes(move, start) < total,
    )
    const settling = quicker.filter((move) => stillPossible([...told, move]).size === course.alike.length)
    expect(settling).toEqual([])
  })

  it('carries a course of a size that a page can bear', () => {
    expect(packCourse(course, told, [], { checks: [] }).length).toBeLessThan(LARGEST_COURSE)
  })
})
