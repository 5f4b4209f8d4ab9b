import { download } from './deliver.ts'
import { asCSV, asJSON, asText } from './export.ts'
import { ResetButtons } from './ResetButtons.tsx'
import type { Summary } from './summary.ts'
import { useDelivery } from './use-delivery.tsx'

interface Props {
  /** False until the page's script has taken over: before that the buttons could do nothing. */
  ready: boolean
  /** Brings the address up to date first, so that what leaves the page carries the right one. */
  summary: () => Summary
  reset: () => void
  undoReset: (() => void) | undefined
}

export function Actions({ ready, summary, reset, undoReset }: Props) {
  const { say, copy, told } = useDelivery()
  const save = (ending: 'csv' | 'json', type: string, write: (summary: Summary) => string) => {
    const content = summary()
    const name = `${content.calculator}.${ending}`
    download(name, type, write(content))
    say(`${name} handed to the browser to keep.`)
  }
  return (
    <div class="calculator-actions" data-ready={ready ? 'true' : 'false'}>
      <div class="calculator-buttons">
        <button type="button" onClick={() => copy('Link', summary().address)}>
          Copy link
        </button>
        <button type="button" onClick={() => copy('Text', asText(summary()))}>
          Copy as text
        </button>
        <button type="button" onClick={() => save('csv', 'text/csv', asCSV)}>
          Download CSV
        </button>
        <button type="button" onClick={() => save('json', 'application/json', asJSON)}>
          Download JSON
        </button>
        <button
          type="button"
          onClick={() => {
            summary()
            window.print()
          }}
        >
          Print
        </button>
        <ResetButtons
          reset={reset}
          wasReset="Back to the values at the start."
          undoReset={undoReset}
          wasUndone="Your values are back."
          say={say}
        />
      </div>
      {told}
    </div>
  )
}
