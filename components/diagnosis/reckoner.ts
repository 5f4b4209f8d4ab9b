import { useEffect, useRef, useState } from 'preact/hooks'
import type { PlantState } from '../../calculators/checks/types.ts'
import type { Observation } from '../../calculators/diagnosis/index.ts'
import type { Accuracies } from './accuracies.ts'
import type { FoundCauses, FoundNext } from './types.ts'
import type { FromWorker, ToWorker } from './worker-messages.ts'

export interface Reckoned {
  /** The last that were reckoned; none before the first. */
  readonly causes: FoundCauses | undefined
  readonly next: FoundNext | undefined
  /** 'behind' while what was told last is being reckoned. */
  readonly status: 'loading' | 'behind' | 'ready' | 'failed'
  readonly again: () => void
}

/**
 * The ranking of what was told, reckoned in a worker.
 * @param knowledge address of what it rests on
 * @param observations that were made; a new array where they have changed
 * @param accuracies of instruments that are not the usual ones; a new object where they have changed
 * @param now state of the plant
 */
export function useReckoned(
  knowledge: string,
  observations: readonly Observation[],
  accuracies: Accuracies,
  now: PlantState,
): Reckoned {
  const [causes, findCauses] = useState<FoundCauses>()
  const [next, findNext] = useState<FoundNext>()
  const [status, setStatus] = useState<Reckoned['status']>('loading')
  const [attempt, tryAgain] = useState(0)
  const workerRef = useRef<Worker>()
  const askedRef = useRef(0)

  useEffect(() => {
    const made = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
    setStatus('loading')
    made.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
      if (data.of !== askedRef.current) return
      if ('causes' in data) {
        findCauses(data.causes)
        setStatus('behind')
      } else if ('next' in data) {
        findNext(data.next)
        setStatus('ready')
      } else setStatus('failed')
    })
    made.addEventListener('error', () => setStatus('failed'))
    workerRef.current = made
    return () => made.terminate()
  }, [knowledge, attempt])

  useEffect(() => {
    askedRef.current += 1
    setStatus((before) => (before === 'ready' ? 'behind' : before))
    const message: ToWorker = { of: askedRef.current, knowledge, observations, accuracies, now }
    workerRef.current?.postMessage(message)
  }, [knowledge, attempt, observations, accuracies, now])

  return { causes, next, status, again: () => tryAgain((count) => count + 1) }
}
