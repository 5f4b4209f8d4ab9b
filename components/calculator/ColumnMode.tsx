import type { ComponentType } from 'preact'
import { useCallback, useEffect, useRef, useState } from 'preact/hooks'
import type { Calculator } from '../../calculators/calculator/types.ts'
import { columnInputs } from './column-inputs.ts'
import type { Evaluation } from './evaluate.ts'
import type { FieldSpecs } from './fields.ts'
import type { FormState } from './state.ts'

export interface ColumnProps {
  readonly htmlId: string
  readonly calculator: Calculator
  readonly specs: FieldSpecs
  readonly state: FormState
  readonly evaluation: Evaluation
}

/** A whole column of readings put through the calculator. Its code is fetched by who opens it. */
export function ColumnMode({ htmlId, calculator, specs, state, evaluation }: ColumnProps) {
  const details = useRef<HTMLDetailsElement>(null)
  const [Column, keep] = useState<ComponentType<ColumnProps>>()
  const [failed, fail] = useState(false)
  const load = useCallback(() => {
    if (details.current?.open !== true) return
    fail(false)
    import('./Column.tsx').then((loaded) => keep(() => loaded.Column)).catch(() => fail(true))
  }, [])
  // It may have been opened before the page's script was there.
  useEffect(load, [load])
  if (columnInputs(evaluation, specs).length === 0) return null
  return (
    <details class="column-mode" ref={details} onToggle={load}>
      <summary>A column of values</summary>
      {Column === undefined ? (
        <p class="column-help">
          {failed
            ? 'This part of the page could not be loaded. Close and open it to try once more.'
            : 'Loading …'}
        </p>
      ) : (
        <Column htmlId={htmlId} calculator={calculator} specs={specs} state={state} evaluation={evaluation} />
      )}
    </details>
  )
}
