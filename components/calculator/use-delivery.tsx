import type { ComponentChildren } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { CopyByHand } from './CopyByHand.tsx'
import { copyText } from './deliver.ts'

/** How long a confirmation stays. */
const CONFIRMATION_MS = 6000

interface Delivery {
  /** Confirms something, for a while. */
  readonly say: (words: string) => void
  /** Puts a text on the clipboard, or into a box to copy from where the browser refuses. `what` it is: 'Link'. */
  readonly copy: (what: string, text: string) => Promise<void>
  /** What was confirmed last, and the box: to stand below the buttons. */
  readonly told: ComponentChildren
}

/** What buttons need that hand something over: a confirmation that fades, and a way to copy by hand. */
export function useDelivery(): Delivery {
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
  const told = (
    <>
      <output class="said">{said}</output>
      {byHand !== undefined && <CopyByHand text={byHand} />}
    </>
  )
  return { say, copy, told }
}
