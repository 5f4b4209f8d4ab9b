import { ResetButtons } from '../../calculator/ResetButtons.tsx'
import { useDelivery } from '../../calculator/use-delivery.tsx'

interface Props {
  /** False until the page's script has taken over: before that the buttons could do nothing. */
  ready: boolean
  /** The page's address with the state as it is at this moment. */
  address: () => string
  reset: () => void
  undoReset: (() => void) | undefined
}

export function BenchActions({ ready, address, reset, undoReset }: Props) {
  const { say, copy, told } = useDelivery()
  return (
    <div class="bench-actions" data-ready={ready ? 'true' : 'false'}>
      <ResetButtons
        reset={reset}
        wasReset="In health again, as at the start."
        undoReset={undoReset}
        wasUndone="What was set is back."
        say={say}
      />
      <button type="button" onClick={() => copy('Link', address())}>
        Copy link
      </button>
      <button type="button" onClick={() => window.print()}>
        Print
      </button>
      {told}
    </div>
  )
}
