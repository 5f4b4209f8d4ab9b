import { useState } from 'preact/hooks'

interface Props {
  htmlId: string
  columns: readonly string[]
  /** Takes the text in place of all that stands in the table. */
  put: (text: string) => void
}

/** A box for a whole table: where a phone offers no way to paste into a cell, and for a text made elsewhere. */
export function PasteBox({ htmlId, columns, put }: Props) {
  const [text, setText] = useState('')
  const boxId = `${htmlId}-paste`
  return (
    <details class="paste-box">
      <summary>Paste a whole table</summary>
      <label for={boxId}>One row a line: {columns.join(', then ')}</label>
      <p class="field-help">
        From a spreadsheet as it is copied, or typed. Cells are parted by tabs or semicolons
        {columns.length === 1 ? '; numbers in one line go down the column' : ''}. It replaces what stands in
        the table above.
      </p>
      <textarea
        id={boxId}
        rows={4}
        autocomplete="off"
        spellcheck={false}
        value={text}
        onInput={(event) => setText(event.currentTarget.value)}
      />
      <button type="button" onClick={() => put(text)}>
        Put into the table
      </button>
    </details>
  )
}
