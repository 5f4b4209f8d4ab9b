import { unpackSignatures, type Knowledge } from '../../calculators/diagnosis/index.ts'
import { reckon } from './reckon.ts'
import type { FromWorker, ToWorker } from './worker-messages.ts'
import type { PackedKnowledge } from './types.ts'

/** The ranking in a thread of its own, so that answering never waits for it. */
let known: Promise<{ knowledge: Knowledge; states: PackedKnowledge['states'] }> | undefined

async function fetchKnowledge(address: string) {
  const response = await fetch(address)
  if (!response.ok) throw new Error(`${address}: ${response.status}`)
  const { signatures, states, ...rest } = (await response.json()) as PackedKnowledge
  return { knowledge: { ...rest, signatures: unpackSignatures(signatures) }, states }
}

const say = (message: FromWorker): void => postMessage(message)

async function answer(message: ToWorker): Promise<void> {
  try {
    known ??= fetchKnowledge(message.knowledge)
    const { knowledge, states } = await known
    say({ findings: reckon(knowledge, states, message.observations, message.now) })
  } catch (error) {
    known = undefined
    say({ failed: error instanceof Error ? error.message : String(error) })
  }
}

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => void answer(data))
