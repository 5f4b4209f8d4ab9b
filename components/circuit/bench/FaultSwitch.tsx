import { steady } from '../steady.tsx'
import { FIRST_SEVERITY, type Action } from './setting.ts'
import { SliderField } from './SliderField.tsx'
import type { BenchFault } from './types.ts'

interface Props {
  fault: BenchFault
  severity: number | undefined
  /** Unique on the page. */
  htmlId: string
  send: (action: Action) => void
}

/** A fault with its switch and, while it is on, how bad it is. */
export const FaultSwitch = steady(({ fault, severity, htmlId, send }: Props) => {
  const on = severity !== undefined
  return (
    <div class={on ? 'fault fault-on' : 'fault'}>
      <label class="fault-switch">
        <input
          type="checkbox"
          checked={on}
          onChange={() => send({ type: 'fault', id: fault.id, severity: on ? undefined : FIRST_SEVERITY })}
        />
        <span>{fault.title}</span>
      </label>
      {on && (
        <SliderField
          htmlId={`${htmlId}-severity`}
          label="How bad"
          of={fault.title}
          kind="ratio"
          value={severity}
          least={0}
          most={1}
          step={1}
          system="si"
          set={(value) => send({ type: 'fault', id: fault.id, severity: value })}
        />
      )}
    </div>
  )
})
