import { stateMinutes } from '../../calculators/checks/state-minutes.ts'
import type { ResultLine } from '../../calculators/checks/describe.ts'
import type { PlantState, SeenGlass } from '../../calculators/checks/types.ts'
import { GlassFace, WINDOW } from '../circuit/bench/GlassFace.tsx'
import { CautionLinks } from './CautionLinks.tsx'
import { ResultLines } from './ResultLines.tsx'
import type { CheckOffer, ExerciseProps } from './types.ts'
import { inMinutes, statesInWords } from './words.ts'

interface Props {
  htmlId: string
  exercise: ExerciseProps
  check: CheckOffer
  now: PlantState
  ended: boolean
  /** What it told when it was last made, and in which state. */
  last:
    | {
        readonly state: PlantState
        readonly lines: readonly ResultLine[]
        readonly glasses: readonly SeenGlass[]
      }
    | undefined
  make: (state: PlantState) => void
}

/** Half of the picture of a glass, its rim included. */
const HALF = WINDOW + 6

/** One check: what it costs, how it is made, and what it last told. */
export function CheckRow({ htmlId, exercise, check, now, ended, last, make }: Props) {
  const { states, stateMinutes: costs, cautionsHref } = exercise
  const here = check.states.includes(now)
  const cheapest = [...check.states].sort(
    (a, b) => stateMinutes(now, a, costs) - stateMinutes(now, b, costs),
  )[0]
  const target = here || cheapest === undefined ? now : cheapest
  const minutes = check.minutes + stateMinutes(now, target, costs)
  return (
    <li class="check">
      <details class="check-words">
        <summary>
          <span class="check-label">{check.label}</span>
          <span class="check-facts">
            {inMinutes(check.minutes)}, {statesInWords(check.states, states)}
          </span>
        </summary>
        <p>{check.how}</p>
        <CautionLinks cautions={check.cautions} href={cautionsHref} />
        {check.procedure && (
          <p>
            Procedure: <a href={check.procedure.href}>{check.procedure.title}</a>
          </p>
        )}
      </details>
      <button
        type="button"
        class="check-make"
        aria-label={`${here ? '' : `${states[target].title} first: `}${check.label}, ${inMinutes(minutes)}`}
        disabled={ended}
        onClick={() => make(target)}
      >
        {here ? 'Do it' : `${states[target].title}, do it`}
        <span class="cost">{inMinutes(minutes)}</span>
      </button>
      {last && (
        <div class="check-told">
          {last.glasses.map((glass) => (
            <svg
              key={glass.part}
              viewBox={`${-HALF} ${-HALF} ${2 * HALF} ${2 * HALF}`}
              width="96"
              height="96"
              aria-hidden="true"
            >
              <circle class="glass-bezel" r={WINDOW + 3} />
              <GlassFace view={glass} id={`${htmlId}-${glass.part}`} />
            </svg>
          ))}
          <div>
            <p class="check-when">{states[last.state].title}:</p>
            <ResultLines lines={last.lines} />
          </div>
        </div>
      )}
    </li>
  )
}
