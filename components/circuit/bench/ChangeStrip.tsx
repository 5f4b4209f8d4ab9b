import { changesAgainst } from '../../../calculators/circuit/changes.ts'
import type { CircuitState } from '../../../calculators/circuit/types.ts'
import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import type { BenchData } from './types.ts'
import { capital, changeWords } from './words.ts'

interface Props {
  data: BenchData
  health: CircuitState
  now: CircuitState
  system: UnitSystem
  /** Changes shown; how many more there are is said. */
  most: number
}

const signs = { up: '▲', down: '▼', other: '●' } as const
const words = { up: 'higher', down: 'lower', other: 'looks otherwise' } as const

/** What the instruments and glasses show otherwise than in health, largest first. */
export function ChangeStrip({ data, health, now, system, most }: Props) {
  const changes = changesAgainst(health, now)
  if (changes.length === 0)
    return <p class="changes-none">As in health: no instrument and no glass shows a difference.</p>
  return (
    <>
      <ol class="changes">
        {changes.slice(0, most).map((change) => {
          const { label, now: value, before, trend } = changeWords(data, change, system)
          return (
            <li key={change.id} class={`change change-${trend}`}>
              <span class="change-sign" aria-hidden="true">
                {signs[trend]}
              </span>
              <span class="change-label">
                {label}
                <span class="unseen"> {words[trend]}: </span>
              </span>
              <span class="change-now">{change.of === 'glass' ? capital(value) : value}</span>
              <span class="change-before">
                {change.of === 'reading' && <span class="unseen">, in health </span>}
                {before}
              </span>
            </li>
          )
        })}
      </ol>
      {changes.length > most && (
        <p class="changes-more">And {changes.length - most} more, in the table below.</p>
      )}
    </>
  )
}
