import { useMemo, useState } from 'preact/hooks'
import { steady } from '../steady.tsx'
import { FaultSwitch } from './FaultSwitch.tsx'
import { faultGroups, matches } from './places.ts'
import type { Action } from './setting.ts'
import type { BenchData, Setting } from './types.ts'

interface Props {
  data: BenchData
  htmlId: string
  /** Severities of those that are on. */
  severities: Setting['faults']
  send: (action: Action) => void
}

/** The faults that are on, then a field to find others, then all of them by where they sit. */
export const FaultList = steady(({ data, htmlId, severities, send }: Props) => {
  const [typed, type] = useState('')
  const on = data.faults.filter(({ id }) => severities[id] !== undefined)
  const all = useMemo(() => faultGroups(data), [data])
  const groups = useMemo(
    () =>
      all
        .map((group) => ({ ...group, faults: group.faults.filter((fault) => matches(data, fault, typed)) }))
        .filter(({ faults }) => faults.length > 0),
    [data, all, typed],
  )
  const count = groups.reduce((sum, { faults }) => sum + faults.length, 0)
  return (
    <section class="faults" aria-labelledby={`${htmlId}-faults`}>
      <h2 id={`${htmlId}-faults`}>Faults</h2>
      <div class="faults-on">
        {on.length === 0 && <p>None is on: the circuit is in health.</p>}
        {on.map((fault) => (
          <FaultSwitch
            key={fault.id}
            fault={fault}
            severity={severities[fault.id]}
            htmlId={`${htmlId}-on-${fault.id}`}
            send={send}
          />
        ))}
      </div>
      <div class="fault-search">
        <label>
          <span>Find a fault</span>
          <input
            type="search"
            autocomplete="off"
            spellcheck={false}
            maxLength={80}
            placeholder="o-ring, plugged, bypass …"
            value={typed}
            onInput={(event) => type(event.currentTarget.value)}
          />
        </label>
        <output class="fault-count">
          {typed === '' ? `${count} faults` : `${count} of ${data.faults.length} faults`}
        </output>
      </div>
      {groups.map(({ title, faults }) => {
        const active = faults.filter(({ id }) => severities[id] !== undefined).length
        return (
          <details key={title} class="fault-group" open={typed !== ''}>
            <summary>
              {title}{' '}
              <span class="fault-group-count">
                {faults.length}
                {active > 0 && `, ${active} on`}
              </span>
            </summary>
            {faults.map((fault) => (
              <FaultSwitch
                key={fault.id}
                fault={fault}
                severity={severities[fault.id]}
                htmlId={`${htmlId}-all-${fault.id}`}
                send={send}
              />
            ))}
          </details>
        )
      })}
      {groups.length === 0 && <p>No fault of this circuit is called so.</p>}
    </section>
  )
})
