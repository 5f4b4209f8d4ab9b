import { useMemo, useState } from 'preact/hooks'
import { runColumn, readColumn, MOST_ROWS } from './column-data.ts'
import { columnInputs } from './column-inputs.ts'
import { tableColumns } from './column-table.ts'
import { ColumnActions } from './ColumnActions.tsx'
import { ColumnChart } from './ColumnChart.tsx'
import type { ColumnProps } from './ColumnMode.tsx'
import { ColumnTable } from './ColumnTable.tsx'
import { UnitPicker } from './Field.tsx'
import { useSettled } from '../layout/settled.ts'
import { Sign } from './Sign.tsx'
import './column.css'

/** A long column is not computed anew at every key. */
const PAUSE_MS = 200
/** So many bad lines are named; a wrong unit would name them all. */
const NAMED = 20

/** Paste, table, chart and file for one input; all others stay as the form has them. */
export function Column({ htmlId, calculator, specs, state, evaluation }: ColumnProps) {
  const inputs = useMemo(() => columnInputs(evaluation, specs), [evaluation, specs])
  const usual = calculator.chart?.x
  const [wanted, want] = useState(usual)
  const [picked, pick] = useState<Readonly<Record<string, string>>>({})
  const [text, setText] = useState('')
  const spec = inputs.find(({ id }) => id === wanted) ?? inputs[0]
  const unit = spec === undefined ? '1' : (picked[spec.id] ?? state.fields[spec.id]?.unit ?? spec.usualUnit)
  const values = useSettled(evaluation.values, PAUSE_MS)
  const pasted = useSettled(text, PAUSE_MS)
  const reading = useMemo(
    () => (spec === undefined ? undefined : readColumn(pasted, spec, unit)),
    [pasted, spec, unit],
  )
  const missing = evaluation.relevant.filter((id) => id !== spec?.id && values[id] === undefined)
  const result = useMemo(
    () =>
      spec === undefined || reading === undefined || missing.length > 0
        ? undefined
        : runColumn(calculator, values, spec.id, reading),
    [calculator, values, spec, reading, missing.length],
  )
  if (spec === undefined || reading === undefined) return null
  const columns = tableColumns(calculator, spec, unit, state)
  const id = `${htmlId}-column`
  return (
    <div class="column">
      <p class="column-help" id={`${id}-help`}>
        One value a line, with or without its unit, up to {MOST_ROWS} of them. All other inputs stay as they
        stand above. The column is not kept in the address of the page.
      </p>
      <div class="column-entry">
        <div>
          <label for={`${id}-input`}>{'Input given as a column'}</label>
          <div class="field-entry">
            <select
              id={`${id}-input`}
              value={spec.id}
              autocomplete="off"
              onChange={(event) => want(event.currentTarget.value)}
            >
              {inputs.map((one) => (
                <option key={one.id} value={one.id} selected={one.id === spec.id}>
                  {one.label}
                </option>
              ))}
            </select>
            <UnitPicker
              label={`Unit of the column: ${spec.label}`}
              name={`${spec.id}.column-unit`}
              units={spec.units}
              unit={unit}
              pick={(chosen) => pick({ ...picked, [spec.id]: chosen })}
            />
          </div>
        </div>
        <div>
          <label for={`${id}-text`}>{'Values'}</label>
          <textarea
            id={`${id}-text`}
            rows={8}
            spellcheck={false}
            autocomplete="off"
            value={text}
            aria-describedby={`${id}-help ${id}-bad`}
            onInput={(event) => setText(event.currentTarget.value)}
          />
        </div>
      </div>
      <div class="column-problems" id={`${id}-bad`} aria-live="polite">
        {missing.length > 0 && (
          <Problem
            text={`Nothing is computed until this can be read: ${missing.map((one) => specs[one]?.label ?? one).join(', ')}.`}
          />
        )}
        {reading.leftOut !== '' && <Problem text={reading.leftOut} />}
        <BadLines sentences={(result ?? reading).bad.map(({ sentence }) => sentence)} />
      </div>
      {result !== undefined && result.rows.length > 0 && (
        <>
          <ColumnActions name={calculator.id} columns={columns} result={result} />
          <ColumnTable columns={columns} rows={result.rows} />
          <ColumnChart
            calculator={calculator}
            spec={spec}
            unit={unit}
            state={state}
            rows={result.rows}
            htmlId={id}
          />
        </>
      )}
    </div>
  )
}

function Problem({ text }: { text: string }) {
  return (
    <p class="refused">
      <Sign grade="action" />
      <span>{text}</span>
    </p>
  )
}

function BadLines({ sentences }: { sentences: readonly string[] }) {
  const more = sentences.length - NAMED
  if (sentences.length === 0) return null
  return (
    <ul class="refused-lines">
      {sentences.slice(0, NAMED).map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
      {more > 0 && <li>And {more} more lines that could not be used; the file names them all.</li>}
    </ul>
  )
}
