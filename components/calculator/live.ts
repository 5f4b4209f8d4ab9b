import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Calculator } from '../../calculators/calculator/types.ts'
import { readQuantity } from '../../calculators/quantity/read.ts'
import { printEvent } from '../layout/print-event.ts'
import { preferencesEvent } from '../settings/preferences.ts'
import { unitSystem } from '../settings/unit-system.ts'
import { evaluate } from './evaluate.ts'
import type { Evaluation } from './evaluate.ts'
import type { FieldSpecs } from './fields.ts'
import { meaningOf, worded } from './state.ts'
import type { Action, FormState } from './state.ts'

type Send = (action: Action) => void

export function useUnitSystem(send: Send): void {
  useEffect(() => {
    const follow = () => send({ type: 'follow', system: unitSystem() })
    document.addEventListener(preferencesEvent, follow)
    return () => document.removeEventListener(preferencesEvent, follow)
  }, [send])
}

const notLoaded = {
  ok: false,
  reason: 'the part of the page that reads expressions could not be loaded',
  accepted: 'a plain number, or a number with one unit',
} as const

/** Sends each waiting text through the unit parser, which is loaded only for the first of them. */
export function useExpressions(specs: FieldSpecs, { fields, tables }: FormState, send: Send): void {
  useEffect(() => {
    for (const { spec, rows } of Object.values(tables))
      for (const [row, cells] of rows.entries())
        for (const [column, of] of Object.entries(cells)) {
          const field = spec.columns[column]
          if (field === undefined || of.reading !== 'waiting') continue
          readQuantity(of.text, field.kind, of.textUnit)
            .catch(() => notLoaded)
            .then((reading) => send({ type: 'readCell', table: spec.id, row, column, of, reading }))
        }
    for (const [id, of] of Object.entries(fields)) {
      const spec = specs[id]
      if (spec === undefined || of.reading !== 'waiting') continue
      const { kind, unit } = meaningOf(spec, of.text, of.textUnit)
      readQuantity(of.text, kind, unit)
        .catch(() => notLoaded)
        .then((reading) => send({ type: 'read', field: id, of, reading: worded(spec, reading) }))
    }
  }, [specs, fields, tables, send])
}

/** The many draws behind some ± wait for a pause in the typing. */
const DRAWS_PAUSE_MS = 120

/** An evaluation with the state it belongs to. */
export interface Calculation {
  readonly state: FormState
  readonly evaluation: Evaluation
}

/**
 * The result at once, within the frame of the keystroke, and after the browser has shown it the same with every ±
 * and all that is drawn from it: `drawn` lags behind by a frame, or by a pause in the typing where a ± takes long.
 */
export function useCalculation(
  calculator: Calculator,
  specs: FieldSpecs,
  state: FormState,
): { readonly evaluation: Evaluation; readonly drawn: Calculation } {
  const [drawn, draw] = useState(() => ({ state, evaluation: evaluate(calculator, specs, state) }))
  const evaluation = useMemo(
    () => (drawn.state === state ? drawn.evaluation : evaluate(calculator, specs, state, 'later')),
    [calculator, specs, state, drawn],
  )
  useEffect(() => {
    if (drawn.state === state) return
    const { pending } = evaluation
    const finish = () =>
      draw({ state, evaluation: pending ? evaluate(calculator, specs, state) : evaluation })
    const timer = setTimeout(finish, pending ? DRAWS_PAUSE_MS : 0)
    // Paper shows no half of it.
    document.addEventListener(printEvent, finish)
    return () => {
      clearTimeout(timer)
      document.removeEventListener(printEvent, finish)
    }
  }, [calculator, specs, state, evaluation, drawn])
  return { evaluation, drawn }
}

/**
 * The last evaluation that waited for nothing. It stays in sight, dimmed, while an expression is being read: for
 * the blink that this takes, an empty page would only flicker.
 */
export function useLastRead({ state, evaluation }: Calculation): Calculation {
  const [last, keep] = useState({ state, evaluation })
  useEffect(() => {
    if (!evaluation.waiting) keep({ state, evaluation })
  }, [state, evaluation])
  return evaluation.waiting ? last : { state, evaluation }
}
