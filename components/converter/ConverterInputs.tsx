import { kindOf } from '../../calculators/quantity/kinds.ts'
import { unitOf } from '../../calculators/quantity/units.ts'
import { sentenceOf } from '../calculator/evaluate.ts'
import { UnitPicker } from '../calculator/Field.tsx'
import { Sign } from '../calculator/Sign.tsx'
import { conversionsOf, inOneLine, kindChoices, otherReference, unitsOffered } from './conversions.ts'
import type { ConverterAction, ConverterState, Entry } from './converter-state.ts'
import { isKind } from './converter-state.ts'
import { kindNotes } from './kind-notes.ts'

interface Props {
  htmlId: string
  state: ConverterState
  send: (action: ConverterAction) => void
}

const LONGEST_TEXT = 200
/** As many units as fit one line of a phone. */
const IN_BRIEF = 3

/** The kind of quantity, the value, and for a pressure the air it is counted from. */
export function ConverterInputs({ htmlId, state, send }: Props) {
  const note = kindNotes[state.kind]
  const units = unitsOffered(state.kind)
  return (
    <fieldset class="calculator-given">
      <legend class="unseen">What to convert</legend>
      <div class="calculator-inputs">
        <div class="field">
          <label for={`${htmlId}-kind`}>{'Kind of quantity'}</label>
          <select
            id={`${htmlId}-kind`}
            name="kind"
            autocomplete="off"
            value={state.kind}
            aria-describedby={`${htmlId}-note`}
            onChange={(event) => {
              const { value } = event.currentTarget
              if (isKind(value)) send({ type: 'kind', kind: value })
            }}
          >
            {kindChoices().map(({ id, label }) => (
              <option key={id} value={id} selected={id === state.kind}>
                {label}
              </option>
            ))}
          </select>
        </div>
        <Line
          htmlId={`${htmlId}-value`}
          name="value"
          label="Value"
          help="A number, a number with its unit, or a sum such as 2 bar + 30 kPa."
          entry={state.value}
          units={units}
          pick={(unit) => send({ type: 'unit', unit })}
          type={(text) => send({ type: 'type', entry: 'value', text })}
        />
        {otherReference(state.kind) !== undefined && (
          <Line
            htmlId={`${htmlId}-barometer`}
            name="barometer"
            label="Barometric pressure"
            help="For the step between gauge and absolute. The standard atmosphere stands here until you know better."
            entry={state.barometer}
            units={[state.barometer.unit]}
            pick={() => undefined}
            type={(text) => send({ type: 'type', entry: 'barometer', text })}
          />
        )}
        <div id={`${htmlId}-note`} class="converter-note">
          {note && (
            <>
              <p class="field-help">{note.text}</p>
              {note.instead.map((kind) => (
                <button key={kind} type="button" onClick={() => send({ type: 'kind', kind })}>
                  {`Take it as ${/^[aeiou]/.test(kindOf(kind).label) ? 'an' : 'a'} ${kindOf(kind).label}`}
                </button>
              ))}
            </>
          )}
        </div>
      </div>
      <p class="result-strip" aria-hidden="true">
        {inBrief(state)}
      </p>
    </fieldset>
  )
}

/** The usual units alone, where the table stands below the fields. */
function inBrief({ kind, value: { reading } }: ConverterState): string {
  if (reading === 'waiting') return ''
  if (!reading.ok) return 'Nothing to convert yet'
  return conversionsOf(reading.si, kind).slice(0, IN_BRIEF).map(inOneLine).join(' = ')
}

interface LineProps {
  htmlId: string
  name: string
  label: string
  help: string
  entry: Entry
  units: readonly string[]
  pick: (unit: string) => void
  type: (text: string) => void
}

function Line({ htmlId, name, label, help, entry, units, pick, type }: LineProps) {
  const refused = entry.reading !== 'waiting' && !entry.reading.ok
  return (
    <div class={refused ? 'field field-refused' : 'field'}>
      <label for={htmlId}>{label}</label>
      <div class="field-entry">
        <input
          id={htmlId}
          name={name}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          maxLength={LONGEST_TEXT}
          value={entry.text}
          aria-invalid={refused ? 'true' : 'false'}
          aria-describedby={`${htmlId}-help ${htmlId}-message`}
          onInput={(event) => type(event.currentTarget.value)}
        />
        <UnitPicker
          label={`Unit of a number without one: ${label}`}
          name={`${name}.unit`}
          units={units}
          unit={entry.unit}
          pick={pick}
        />
      </div>
      <p class="field-help" id={`${htmlId}-help`}>
        {help}
      </p>
      <p class="field-message" id={`${htmlId}-message`} aria-live="polite">
        <Message label={label} entry={entry} />
      </p>
    </div>
  )
}

function Message({ label, entry }: { label: string; entry: Entry }) {
  const { reading } = entry
  if (reading === 'waiting') return <>Reading what was typed …</>
  if (!reading.ok)
    return (
      <span class="refused">
        <Sign grade="action" />
        <span>{sentenceOf({ label, read: entry.text, ...reading })}</span>
      </span>
    )
  if (reading.understood === '') return null
  return <>{`Understood in ${unitOf(entry.unit).symbol}: ${reading.understood}`}</>
}
