import { useEffect, useRef, useState } from 'preact/hooks'
import type { TableInput } from '../../calculators/calculator/types.ts'
import { LONGEST_TEXT } from './address.ts'
import { sentenceOf } from './evaluate.ts'
import type { Problem } from './evaluate.ts'
import { UnitPicker } from './Field.tsx'
import { MathText } from './MathText.tsx'
import { cutPasted, isTable, pasteInWords } from './paste.ts'
import { PasteBox } from './PasteBox.tsx'
import { Sign } from './Sign.tsx'
import { shownText } from './state.ts'
import type { Action, QuantityField } from './state.ts'
import type { TableState } from './table-state.ts'
import { cellKey } from './tables.ts'

interface Props {
  htmlId: string
  input: TableInput
  table: TableState
  problems: Readonly<Record<string, Problem>>
  send: (action: Action) => void
}

/** A table of quantities: cells to type or paste into, a unit for each column, and a message for each bad cell. */
export function TableField({ htmlId, input, table, problems, send }: Props) {
  const { spec, rows } = table
  const columns = Object.entries(spec.columns)
  const own = useRef<HTMLFieldSetElement>(null)
  const [said, say] = useState('')
  const [goTo, askFocus] = useState<string>()
  const helpId = `${htmlId}-help`
  const messagesId = `${htmlId}-messages`
  const name = spec.rowName
  const least = rows.length <= spec.rows.minimum
  const full = rows.length >= spec.rows.maximum

  // A row that has just been added, or moved up, is there only after the next rendering.
  useEffect(() => {
    if (goTo === undefined) return
    const cell = own.current?.querySelector<HTMLElement>(`[name="${CSS.escape(goTo)}"]`)
    cell?.focus()
    askFocus(undefined)
  }, [goTo, rows.length])

  const at = (row: number, column: string): string => cellKey(spec.id, row, column)
  const first = columns[0]?.[0] ?? ''
  const addRow = (column: string) => {
    if (full) return
    send({ type: 'addRow', table: spec.id })
    say(`${name} ${rows.length + 1} added.`)
    askFocus(at(rows.length, column))
  }
  const removeRow = (row: number) => {
    send({ type: 'removeRow', table: spec.id, row })
    say(`${name} ${row + 1} removed; those after it moved up.`)
    askFocus(at(Math.min(row, rows.length - 2), first))
  }
  const pressed = (event: KeyboardEvent, row: number, column: string) => {
    const down = event.key === 'ArrowDown' || event.key === 'Enter'
    if (!down && event.key !== 'ArrowUp') return
    event.preventDefault()
    const next = down ? row + 1 : row - 1
    if (next >= rows.length && event.key === 'Enter') addRow(column)
    else if (next >= 0 && next < rows.length) askFocus(at(next, column))
  }
  const pasted = (event: ClipboardEvent, row: number, column: string) => {
    const text = event.clipboardData?.getData('text/plain') ?? ''
    if (!isTable(text)) return
    event.preventDefault()
    const room = {
      rows: spec.rows.maximum - row,
      columns: columns.length - columns.findIndex(([id]) => id === column),
    }
    const cut = cutPasted(text, room.columns)
    send({ type: 'fillCells', table: spec.id, row, column, cells: cut.cells })
    say(pasteInWords(cut, room))
  }
  const replaced = (text: string) => {
    const room = { rows: spec.rows.maximum, columns: columns.length }
    const cut = cutPasted(text, room.columns)
    if (cut.cells.length === 0) return say('There was nothing in the box.')
    send({ type: 'replaceRows', table: spec.id, cells: cut.cells })
    say(pasteInWords(cut, room))
  }
  const found = Object.entries(problems).filter(([key]) => key === spec.id || key.startsWith(`${spec.id}.`))
  return (
    <fieldset
      class={found.length > 0 ? 'table-field table-field-refused' : 'table-field'}
      ref={own}
      aria-describedby={helpId}
    >
      <legend>{spec.label}</legend>
      <p class="field-help" id={helpId}>
        {input.help}
      </p>
      <div class="table-scroller">
        <table>
          <thead>
            <tr>
              <th scope="col">{name}</th>
              {columns.map(([id, column]) => (
                <th scope="col" key={id}>
                  <span class="column-name">
                    {column.label}{' '}
                    <span class="symbol">
                      <MathText text={column.symbol} />
                    </span>
                  </span>
                  <UnitPicker
                    label={`Unit of ${column.label}`}
                    name={`${column.id}.unit`}
                    units={column.units}
                    unit={table.units[id]?.unit ?? column.usualUnit}
                    pick={(unit) => send({ type: 'pickColumnUnit', table: spec.id, column: id, unit })}
                  />
                </th>
              ))}
              <th scope="col" class="row-end">
                <span class="unseen">Remove</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row, place) => (
              <tr key={at(place, first)}>
                <th scope="row">{place + 1}</th>
                {columns.map(([id, column]) => {
                  const field = row[id] as QuantityField
                  const key = at(place, id)
                  return (
                    <td key={id}>
                      <input
                        name={key}
                        type="text"
                        inputMode="decimal"
                        autocomplete="off"
                        spellcheck={false}
                        maxLength={LONGEST_TEXT}
                        aria-label={`${name} ${place + 1}: ${column.label}`}
                        aria-invalid={problems[key] ? 'true' : 'false'}
                        aria-describedby={problems[key] ? messagesId : undefined}
                        value={shownText(field, column)}
                        onInput={(event) =>
                          send({
                            type: 'typeCell',
                            table: spec.id,
                            row: place,
                            column: id,
                            text: event.currentTarget.value,
                          })
                        }
                        onKeyDown={(event) => pressed(event, place, id)}
                        onPaste={(event) => pasted(event, place, id)}
                      />
                    </td>
                  )
                })}
                <td class="row-end">
                  <button
                    type="button"
                    class="remove-row"
                    disabled={least}
                    aria-label={`Remove ${name.toLowerCase()} ${place + 1}`}
                    onClick={() => removeRow(place)}
                  >
                    <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
                      <path d="M4 4l8 8M12 4l-8 8" />
                    </svg>
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <ul class="table-messages" id={messagesId} aria-live="polite">
        {found.map(([key, problem]) => (
          <li key={key} class="refused">
            <Sign grade="action" />
            <span>{sentenceOf(problem)}</span>
          </li>
        ))}
      </ul>
      <div class="table-actions">
        <button type="button" disabled={full} onClick={() => addRow(first)}>
          Add a {name.toLowerCase()}
        </button>
        <span class="field-help">
          {rows.length} of at most {spec.rows.maximum}
        </span>
      </div>
      <PasteBox htmlId={htmlId} columns={columns.map(([, column]) => column.label)} put={replaced} />
      <output class="said">{said}</output>
    </fieldset>
  )
}
