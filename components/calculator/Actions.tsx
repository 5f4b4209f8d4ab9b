import { useEffect, useState } from 'preact/hooks'
import { CopyByHand } from './CopyByHand.tsx'
import { copyText, download } from './deliver.ts'
import { asCSV, asJSON, asText } from './export.ts'
import type { Summary } from './summary.ts'

interface Props {
  /** False until the page's script has taken over: before that the buttons could do nothing. */
  ready: boolean
  /** Brings the address up to date first, so that what leaves the page carries the right one. */
  summary: () => Summary
  reset: () => void
  undoReset: (() => void) | undefined
}

/** How long a confirmation stays. */
const CONFIRMATION_MS = 6000

export function Actions({ ready, summary, reset, undoReset }: Props) {
  const [said, say] = useState('')
  const [byHand, offerByHand] = useState<string>()
  useEffect(() => {
    if (said === '') return
    const timer = setTimeout(() => say(''), CONFIRMATION_MS)
    return () => clearTimeout(timer)
  }, [said])

  const copy = async (what: string, text: string) => {
    const copied = await copyText(text)
    offerByHand(copied ? undefined : text)
    say(copied ? `${what} copied.` : `The browser did not allow copying. ${what} stands in the box below.`)
  }
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
        <button
          type="button"
          onClick={() => {
            reset()
            say('Back to the values at the start.')
          }}
        >
          Reset
        </button>
        {undoReset && (
          <button
            type="button"
            onClick={() => {
              undoReset()
              say('Your values are back.')
            }}
          >
            Undo reset
          </button>
        )}
      </div>
      <output class="said">{said}</output>
      {byHand !== undefined && <CopyByHand text={byHand} />}
    </div>
  )
}
