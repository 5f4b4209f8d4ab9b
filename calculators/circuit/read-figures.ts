import { acceptedIn } from '../quantity/convert.ts'
import { readFigure } from '../quantity/figure.ts'
import { kindOf } from '../quantity/kinds.ts'
import type { KindId } from '../quantity/types.ts'
import { acceptedRange, isWithin, type Limits } from './accepted.ts'
import type { CircuitProblem } from './validate.ts'

/** A set point of a plant: what of it a circuit can rest on. */
export interface SetPoint {
  readonly kind: KindId
  readonly value: string
}

export type Path = readonly (string | number)[]

/** Reads figures and keeps a list of what it had to refuse. */
export interface FigureReader {
  readonly problems: CircuitProblem[]
  /**
   * A figure ('450 kPa') or the value of a set point.
   * @returns the value in SI; not a number where it was refused
   */
  readonly figure: (
    path: Path,
    text: unknown,
    kind: KindId,
    limits?: Pick<Limits, 'minimum' | 'maximum'>,
  ) => number
  readonly refuse: (path: Path, message: string) => void
}

/**
 * A reader for the figures of one circuit.
 * @param setPoints of the plant that the circuit belongs to, by id
 * @returns a reader whose problems name path, value and what is accepted
 */
export function figureReader(setPoints: Readonly<Record<string, SetPoint>>): FigureReader {
  const problems: CircuitProblem[] = []
  const refuse = (path: Path, message: string): void => {
    problems.push({ path: [...path], message })
  }
  const figure = (
    path: Path,
    text: unknown,
    kind: KindId,
    limits?: Pick<Limits, 'minimum' | 'maximum'>,
  ): number => {
    if (typeof text !== 'string') {
      refuse(
        path,
        `${text === undefined ? 'nothing' : `«${String(text)}»`} stands here; accepted: a text, ${acceptedIn(kind)}`,
      )
      return Number.NaN
    }
    const point = Object.hasOwn(setPoints, text) ? setPoints[text] : undefined
    if (point && point.kind !== kind) {
      refuse(
        path,
        `the set point «${text}» is a ${kindOf(point.kind).label}; accepted: a ${kindOf(kind).label}, ${acceptedIn(kind)}`,
      )
      return Number.NaN
    }
    const reading = readFigure(point?.value ?? text, kind)
    if (!reading.ok) {
      refuse(path, `${reading.reason}; accepted: ${reading.accepted}, or the id of a set point of the plant`)
      return Number.NaN
    }
    if (limits && !isWithin(reading.si, limits)) {
      refuse(path, `«${text}» is out of range; accepted: ${acceptedRange({ ...limits, kind })}`)
      return Number.NaN
    }
    return reading.si
  }
  return { problems, figure, refuse }
}
