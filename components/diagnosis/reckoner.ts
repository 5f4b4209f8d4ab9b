import { useEffect, useRef, useState } from 'preact/hooks'
import type { PlantState } from '../../calculators/checks/types.ts'
import type { Observation } from '../../calculators/diagnosis/index.ts'
import type { Findings } from './types.ts'
import type { FromWorker, ToWorker } from './worker-messages.ts'

export interface Reckoned {
  /** The last that was reckoned; none before the first. */
  readonly findings: Findings | undefined
  /** 'behind' while the newest answers are being reckoned. */
  readonly status: 'loading' | 'behind' | 'ready' | 'failed'
  readonly again: () => void
}

interface Question {
  readonly observations: readonly Observation[]
  readonly now: PlantState
}

/** One question at a time goes to the worker; of those that come meanwhile only the newest waits. */
class Reckoner {
  #busy = false
  #waiting: Question | undefined
  readonly #worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
  readonly #knowledge: string

  constructor(knowledge: string, found: (findings: Findings, newest: boolean) => void, failed: () => void) {
    this.#knowledge = knowledge
    this.#worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
      this.#busy = false
      const waiting = this.#waiting
      this.#waiting = undefined
      if ('failed' in data) {
        failed()
        return
      }
      found(data.findings, waiting === undefined)
      if (waiting !== undefined) this.ask(waiting)
    })
    this.#worker.addEventListener('error', failed)
  }

  ask(question: Question): void {
    if (this.#busy) {
      this.#waiting = question
      return
    }
    this.#busy = true
    const message: ToWorker = { knowledge: this.#knowledge, ...question }
    this.#worker.postMessage(message)
  }

  stop(): void {
    this.#worker.terminate()
  }
}

/**
 * The ranking of what was told, reckoned in a worker.
 * @param knowledge address of what it rests on
 * @param observations that were made; a new array where they have changed
 * @param now state of the plant
 */
export function useReckoned(
  knowledge: string,
  observations: readonly Observation[],
  now: PlantState,
): Reckoned {
  const [findings, find] = useState<Findings>()
  const [status, setStatus] = useState<Reckoned['status']>('loading')
  const [attempt, tryAgain] = useState(0)
  const reckoner = useRef<Reckoner>()
  useEffect(() => {
    setStatus('loading')
    const made = new Reckoner(
      knowledge,
      (found, newest) => {
        find(found)
        setStatus(newest ? 'ready' : 'behind')
      },
      () => setStatus('failed'),
    )
    reckoner.current = made
    return () => made.stop()
  }, [knowledge, attempt])
  useEffect(() => {
    setStatus((before) => (before === 'ready' ? 'behind' : before))
    reckoner.current?.ask({ observations, now })
  }, [knowledge, attempt, observations, now])
  return { findings, status, again: () => tryAgain((count) => count + 1) }
}
