import type { ColumnRow } from './column-data.ts'
import { headOf } from './column-table.ts'
import type { TableColumn } from './column-table.ts'

interface Props {
  columns: readonly TableColumn[]
  rows: readonly ColumnRow[]
}

/** Each value with what the calculator makes of it, in the order in which they were pasted. */
export function ColumnTable({ columns, rows }: Props) {
  return (
    // A box that scrolls is reached by the keyboard, or its lower rows are not read at all.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <section class="scroller column-table" tabIndex={0} aria-label="The column and its results">
      <table>
        <thead>
          <tr>
            <th scope="col">Line</th>
            {columns.map((column) => (
              <th scope="col" key={column.id}>
                {headOf(column)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.line}>
              <th scope="row">{row.line}</th>
              {columns.map((column) => (
                <td key={column.id}>{column.shown(row)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
