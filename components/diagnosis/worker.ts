import { unpackSignatures, type Knowledge } from '../../calculators/diagnosis/index.ts'
import { withAccuracies, type Accuracies } from './accuracies.ts'
import { findCauses, findNext } from './reckon.ts'
import type { FromWorker, ToWorker } from './worker-messages.ts'
import type { PackedKnowledge } from './types.ts'

/** The ranking in a thread of its own, so that answering never waits for it. */
let known: Promise<{ knowledge: Knowledge; states: PackedKnowledge['states'] }> | undefined
let waiting: ToWorker | undefined
let busy = false

async function fetchKnowledge(address: string) {
  const response = await fetch(address)
  if (!response.ok) throw new Error(`${address}: ${response.status}`)
  const { signatures, states, ...rest } = (await response.json()) as PackedKnowledge
  return { knowledge: { ...rest, signatures: unpackSignatures(signatures) }, states }
}

const say = (message: FromWorker): void => postMessage(message)

/** Lets a newer question come in. */
const pause = (): Promise<void> => new Promise((done) => setTimeout(done, 0))

let stated = { text: '{}', knowledge: undefined as Knowledge | undefined }

/** The knowledge with the accuracies that were stated, kept as long as they are: much is reckoned once for each. */
function inWhichOne(knowledge: Knowledge, accuracies: Accuracies): Knowledge {
  const text = JSON.stringify(accuracies)
  if (text === '{}') return knowledge
  if (text !== stated.text) stated = { text, knowledge: withAccuracies(knowledge, accuracies) }
  return stated.knowledge ?? knowledge
}

async function answer(question: ToWorker): Promise<void> {
  const { of, observations, accuracies, now } = question
  known ??= fetchKnowledge(question.knowledge)
  const { knowledge: usual, states } = await known
  const knowledge = inWhichOne(usual, accuracies)
  if (waiting !== undefined) return
  const { ranking, causes } = findCauses(knowledge, observations)
  say({ of, causes })
  await pause()
  if (waiting === undefined) say({ of, next: findNext(knowledge, ranking, observations, states, now) })
}

async function work(): Promise<void> {
  busy = true
  while (waiting !== undefined) {
    const question = waiting
    waiting = undefined
    try {
      await answer(question)
    } catch (error) {
      known = undefined
      say({ of: question.of, failed: error instanceof Error ? error.message : String(error) })
    }
  }
  busy = false
}

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  waiting = data
  if (!busy) void work()
})
