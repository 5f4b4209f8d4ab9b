import { useEffect, useState } from 'preact/hooks'
import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import { useSettled } from '../../layout/settled.ts'
import type { BenchData } from './types.ts'
import type { Answer } from './use-solved.ts'
import { spokenState } from './words.ts'

/** A screen reader is told the state when the sliding pauses. */
const SPEECH_PAUSE_MS = 900

interface Props {
  data: BenchData
  answer: Answer
  system: UnitSystem
  /** What the page opens with is no news. */
  touched: boolean
}

/** Tells a screen reader what came of a change: the glasses and the largest changes, once. */
export function Spoken({ data, answer, system, touched }: Props) {
  const quiet = useSettled(answer, SPEECH_PAUSE_MS) === answer
  const { now, health, reason } = answer
  // What was said last stays, so that the same words are not said again after each move.
  const [said, say] = useState('')
  useEffect(() => {
    if (touched && quiet) say(now && health ? spokenState(data, health, now, system) : `No answer. ${reason}`)
  }, [touched, quiet, data, now, health, reason, system])
  return <output class="unseen">{said}</output>
}
