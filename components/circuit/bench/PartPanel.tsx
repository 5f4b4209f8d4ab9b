import { useEffect, useRef } from 'preact/hooks'
import { partKinds } from '../../../calculators/circuit/part-kinds.ts'
import type { CircuitState } from '../../../calculators/circuit/types.ts'
import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import { href } from '../../layout/href.ts'
import { FaultSwitch } from './FaultSwitch.tsx'
import { PartFigures } from './PartFigures.tsx'
import { faultsAt } from './places.ts'
import type { Action } from './setting.ts'
import type { BenchData, BenchElement, Setting } from './types.ts'

interface Props {
  data: BenchData
  htmlId: string
  element: BenchElement
  setting: Setting
  now: CircuitState | undefined
  health: CircuitState | undefined
  system: UnitSystem
  send: (action: Action) => void
  /** Whether it takes the focus: it was chosen just now, and not by the address. */
  focused: boolean
  close: () => void
}

/** What a part does, what is read at it now and in health, its law, where to read on, and its faults. */
export function PartPanel({
  data,
  htmlId,
  element,
  setting,
  now,
  health,
  system,
  send,
  focused,
  close,
}: Props) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    if (focused) heading.current?.focus()
  }, [focused, element.id])
  const kind = partKinds[element.model.kind]
  const faults = faultsAt(data, element.id)
  const paths = [element.article, element.procedure && `procedures/${element.procedure}`]
  const ways = paths.flatMap((path) => (path && data.pages[path] ? [{ path, title: data.pages[path] }] : []))
  return (
    <section class="part-panel" aria-labelledby={`${htmlId}-part`}>
      <div class="part-head">
        <h2 id={`${htmlId}-part`} tabIndex={-1} ref={heading}>
          {element.label}
        </h2>
        <button type="button" onClick={close}>
          Close
        </button>
      </div>
      <p>{element.purpose}</p>
      {now && health && <PartFigures data={data} id={element.id} now={now} health={health} system={system} />}
      <p>
        <strong>In health:</strong> {element.inHealth}
      </p>
      <p>
        <strong>Law ({kind.title.toLowerCase()}):</strong> {kind.law}
      </p>
      {ways.length > 0 && (
        <ul class="part-ways">
          {ways.map(({ path, title }) => (
            <li key={path}>
              <a href={href(path)}>{title}</a>
            </li>
          ))}
        </ul>
      )}
      {faults.length > 0 ? (
        <div class="part-faults">
          <h3>Its faults</h3>
          {faults.map((fault) => (
            <FaultSwitch
              key={fault.id}
              fault={fault}
              severity={setting.faults[fault.id]}
              htmlId={`${htmlId}-part-${fault.id}`}
              send={send}
            />
          ))}
        </div>
      ) : (
        <p>No fault of this part is on the list.</p>
      )}
    </section>
  )
}
