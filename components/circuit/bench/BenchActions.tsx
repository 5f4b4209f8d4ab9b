import { useEffect, useState } from 'preact/hooks'
import { CopyByHand } from '../../calculator/CopyByHand.tsx'
import { copyText } from '../../calculator/deliver.ts'

interface Props {
  /** False until the page's script has taken over: before that the buttons could do nothing. */
  ready: boolean
  /** The page's address with the state as it is at this moment. */
  address: () => string
  reset: () => void
  undoReset: (() => void) | undefined
}

/** How long a confirmation stays. */
const CONFIRMATION_MS = 6000

export function BenchActions({ ready, address, reset, undoReset }: Props) {
  const [said, say] = useState('')
  const [byHand, offerByHand] = useState<string>()
  useEffect(() => {
    if (said === '') return
    const timer = setTimeout(() => say(''), CONFIRMATION_MS)
    return () => clearTimeout(timer)
  }, [said])
  const copy = async () => {
    const link = address()
    const copied = await copyText(link)
    offerByHand(copied ? undefined : link)
    say(copied ? 'Link copied.' : 'The browser did not allow copying. The link stands in the box below.')
  }
  return (
    <div class="bench-actions" data-ready={ready ? 'true' : 'false'}>
      <button
        type="button"
        onClick={() => {
          reset()
          say('In health again, as at the start.')
        }}
      >
        Reset
      </button>
      {undoReset && (
        <button
          type="button"
          onClick={() => {
            undoReset()
            say('What was set is back.')
          }}
        >
          Undo reset
        </button>
      )}
      <button type="button" onClick={copy}>
        Copy link
      </button>
      <button type="button" onClick={() => window.print()}>
        Print
      </button>
      <output class="said">{said}</output>
      {byHand !== undefined && <CopyByHand text={byHand} />}
    </div>
  )
}
