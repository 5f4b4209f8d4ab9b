import { useState } from 'preact/hooks'
import type { ColumnResult } from './column-data.ts'
import { columnCSV, columnText } from './column-table.ts'
import type { TableColumn } from './column-table.ts'
import { copyText, download } from './deliver.ts'

interface Props {
  /** Start of the file's name. */
  name: string
  columns: readonly TableColumn[]
  result: ColumnResult
}

/** The table for a spreadsheet: as a file, or by way of the clipboard. */
export function ColumnActions({ name, columns, result }: Props) {
  const [said, say] = useState('')
  const save = () => {
    const file = `${name}-column.csv`
    download(file, 'text/csv', columnCSV(columns, result))
    say(`${file} handed to the browser to keep.`)
  }
  const copy = async () => {
    const copied = await copyText(columnText(columns, result, '\t'))
    say(copied ? 'Table copied.' : 'The browser did not allow copying. Take the file.')
  }
  const { rows, bad } = result
  const some = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`
  return (
    <div class="column-actions">
      <p>
        <strong>{some(rows.length, 'value')} computed</strong>
        {bad.length > 0 && `, ${some(bad.length, 'line')} not`}. Results are shown without their ±.
      </p>
      <div class="calculator-buttons">
        <button type="button" onClick={save}>
          Download the table as CSV
        </button>
        <button type="button" onClick={copy}>
          Copy the table
        </button>
      </div>
      <output class="said">{said}</output>
    </div>
  )
}
