import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import { useSettled } from '../../layout/settled.ts'
import type { BenchData } from './types.ts'
import type { Answer } from './use-solved.ts'
import { spokenState } from './words.ts'

/** A screen reader is told the state when the sliding pauses. */
const SPEECH_PAUSE_MS = 900

interface Props extends Answer {
  data: BenchData
  system: UnitSystem
  /** What the page opens with is no news. */
  touched: boolean
}

/** Tells a screen reader what came of a change: the glasses and the largest changes, once. */
export function Spoken({ data, now, health, reason, system, touched }: Props) {
  const words = now && health ? spokenState(data, health, now, system) : `No answer. ${reason}`
  const settled = useSettled(words, SPEECH_PAUSE_MS)
  return <output class="unseen">{touched && settled === words ? words : ''}</output>
}
