import { useEffect, useState } from 'preact/hooks'
import { readQuantity } from '../../calculators/quantity/read.ts'
import type { UnitSystem } from '../../calculators/quantity/types.ts'
import { preferencesEvent } from '../settings/preferences.ts'
import type { Evaluation } from './evaluate.ts'
import type { FieldSpecs } from './fields.ts'
import { meaningOf, worded } from './state.ts'
import type { Action, FormState } from './state.ts'

type Send = (action: Action) => void

/** The unit system that the person has set for the whole site. */
export function unitSystem(): UnitSystem {
  const { units } = document.documentElement.dataset
  return units === 'us' || units === 'mixed' ? units : 'si'
}

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

/** The value as it was when it last stayed the same for so long. */
export function useSettled<T>(value: T, milliseconds: number): T {
  const [settled, settle] = useState(value)
  useEffect(() => {
    const timer = setTimeout(() => settle(() => value), milliseconds)
    return () => clearTimeout(timer)
  }, [value, milliseconds])
  return settled
}

/**
 * The last evaluation that waited for nothing. It stays in sight, dimmed, while an expression is being read: for
 * the blink that this takes, an empty page would only flicker.
 */
export function useLastRead(evaluation: Evaluation): Evaluation {
  const [last, keep] = useState(evaluation)
  useEffect(() => {
    if (!evaluation.waiting) keep(evaluation)
  }, [evaluation])
  return evaluation.waiting ? last : evaluation
}
