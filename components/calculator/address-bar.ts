import { useEffect } from 'preact/hooks'
import { printEvent } from '../layout/print-event.ts'
import { useSettled } from '../layout/settled.ts'

/** Browsers refuse more than a few changes of address a second. */
const ADDRESS_PAUSE_MS = 400

/** Puts the query into the page's address without a new entry in the history, if it says anything new. */
export function showInAddress(query: string): void {
  if (query === new URLSearchParams(location.search).toString()) return
  const search = query === '' ? '' : `?${query}`
  history.replaceState(history.state, '', `${location.pathname}${search}${location.hash}`)
}

/**
 * Keeps the page's address up with a state: at a pause in what the person does, and at once on paper.
 * @param ready false until the state was read from the address
 * @param write puts the state into the address; the same function as long as the state is the same
 * @param writeForPaper the same for paper, where that is another address
 */
export function useAddressBar(
  ready: boolean,
  state: unknown,
  write: () => void,
  writeForPaper: () => void = write,
): void {
  const settled = useSettled(state, ADDRESS_PAUSE_MS)
  useEffect(() => {
    if (ready && settled === state) write()
  }, [ready, settled, state, write])
  useEffect(() => {
    if (!ready) return
    document.addEventListener(printEvent, writeForPaper)
    return () => document.removeEventListener(printEvent, writeForPaper)
  }, [ready, writeForPaper])
}
