import { unitOf } from '../../calculators/quantity/units.ts'
import { LONGEST_TEXT } from './address.ts'
import { sentenceOf } from './evaluate.ts'
import type { Problem } from './evaluate.ts'
import type { FieldSpec } from './fields.ts'
import { MathText } from './MathText.tsx'
import { Sign } from './Sign.tsx'
import { shownText, understoodText } from './state.ts'
import type { Action, QuantityField } from './state.ts'

interface Props {
  /** Unique on the page. */
  htmlId: string
  spec: FieldSpec
  field: QuantityField
  help?: string
  problem: Problem | undefined
  send: (action: Action) => void
}

/** One quantity: a text field that takes a number or an expression, its unit, and what was understood. */
export function Field({ htmlId, spec, field, help, problem, send }: Props) {
  const helpId = `${htmlId}-help`
  const messageId = `${htmlId}-message`
  return (
    <div class={problem ? 'field field-refused' : 'field'}>
      <label for={htmlId}>
        {spec.label}{' '}
        <span class="symbol">
          <MathText text={spec.symbol} />
        </span>
      </label>
      <div class="field-entry">
        <input
          id={htmlId}
          name={spec.id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          maxLength={LONGEST_TEXT}
          value={shownText(field, spec)}
          aria-invalid={problem ? 'true' : 'false'}
          aria-describedby={help ? `${helpId} ${messageId}` : messageId}
          onInput={(event) => send({ type: 'type', field: spec.id, text: event.currentTarget.value })}
        />
        <UnitPicker
          label={`Unit of ${spec.label}`}
          name={`${spec.id}.unit`}
          units={spec.units}
          unit={field.unit}
          pick={(unit) => send({ type: 'pickUnit', field: spec.id, unit })}
        />
      </div>
      {help && (
        <p class="field-help" id={helpId}>
          {help}
        </p>
      )}
      <p class="field-message" id={messageId} aria-live="polite">
        {problem ? <RefusedMessage problem={problem} /> : understoodMessage(field, spec)}
      </p>
    </div>
  )
}

function RefusedMessage({ problem }: { problem: Problem }) {
  return (
    <span class="refused">
      <Sign grade="action" />
      <span>{sentenceOf(problem)}</span>
    </span>
  )
}

function understoodMessage(field: QuantityField, spec: FieldSpec): string {
  if (field.reading === 'waiting') return 'Reading what was typed …'
  const understood = understoodText(field, spec)
  return understood === '' ? '' : `Understood: ${understood}`
}

interface UnitPickerProps {
  label: string
  name: string
  units: readonly string[]
  unit: string
  pick: (unit: string) => void
}

/** The units offered; a single one is shown as plain text. */
export function UnitPicker({ label, name, units, unit, pick }: UnitPickerProps) {
  if (units.length === 1) return unit === '1' ? null : <span class="unit-only">{unitName(unit)}</span>
  return (
    <select
      class="unit-picker"
      aria-label={label}
      name={name}
      autocomplete="off"
      value={unit}
      onChange={(event) => pick(event.currentTarget.value)}
    >
      {units.map((id) => (
        <option key={id} value={id} selected={id === unit}>
          {unitName(id)}
        </option>
      ))}
    </select>
  )
}

/** A plain ratio has no unit to show, yet its entry in a list needs a name. */
function unitName(id: string): string {
  return id === '1' ? 'as a number' : unitOf(id).symbol
}
