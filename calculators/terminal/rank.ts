import { plantStates, type PlantState } from '../checks/types.ts'
import {
  diagnose,
  reasonsOf,
  type Doubt,
  type Knowledge,
  type NextCheck,
  type RankedCause,
  type RankedGroup,
  type Ranking,
} from '../diagnosis/index.ts'
import { kindOf } from '../quantity/kinds.ts'
import { formatForSystem } from '../quantity/format.ts'
import type { Answer, Command } from './command.ts'
import { quoted, refused } from './command.ts'
import { checkStates, faultFile } from './content.ts'
import { knowledgeOf } from './knowledge.ts'
import { readObject, RefusedInput } from './read-inputs.ts'
import { readObservations } from './read-observations.ts'
import { whichCircuit } from './which-circuit.ts'

const FIELDS = ['plant', 'circuit', 'now', 'observations']
const SHOWN_CAUSES = 8
const SHOWN_PAIRS = 3
const SHOWN_CHECKS = 3
const SHOWN_FROM = 0.005

const digits = (share: number): number => Number(share.toPrecision(4))

function printedCause(knowledge: Knowledge, ranking: Ranking, cause: RankedCause) {
  const { title, confirm, procedure, procedureIn, cautions } = faultFile(cause.fault)
  return {
    fault: cause.fault,
    title,
    share: digits(cause.share),
    ...(cause.cylinder === undefined ? {} : { likelyCylinder: cause.cylinder }),
    reasons: reasonsOf(ranking, cause.alone).map(({ item, weight, words }) => ({
      observation: item.label,
      told: item.observation.value,
      says: words,
      weight: digits(weight),
    })),
    confirm,
    procedure: procedureIn?.[knowledge.signatures.circuit] ?? procedure,
    cautions,
  }
}

const printedGroup = ({ causes, share, separating, apartIn }: RankedGroup) => ({
  share: digits(share),
  causes: causes.map(({ fault }) => fault),
  whatTellsThemApart: separating.map(({ id, label }) => ({ check: id, label })),
  statesThatTellSomeApart: apartIn,
})

function printedDoubt(knowledge: Knowledge, { observation, says, mayStand, limit, perhaps }: Doubt) {
  const { id, state, value } = observation
  const kind =
    state && knowledge.signatures.states[state].readings.find((one) => one.id === id && one.kind)?.kind
  if (state === undefined || kind === undefined) return { id, state, value, says, asks: 'Which is right?' }
  const inWords = (one: number): string => formatForSystem(one, kind, 'si')
  const meant = perhaps && `Did you mean ${inWords(perhaps.value)}? So it would be if ${perhaps.because}. `
  return {
    id,
    state,
    value,
    unit: kindOf(kind).siUnit,
    says: limit === undefined ? says : `${says} The limit is about ${inWords(limit)}.`,
    asks: `${meant ?? 'What does the gauge show, and in which unit? '}${mayStand ? 'If it is right as it stands, tell it with "sure": true.' : 'It cannot stand as it was told.'}`,
  }
}

const printedNext = ({ proposals, doNotRun }: NextCheck) => ({
  ...(doNotRun === undefined ? {} : { doNotRun }),
  nextChecks: proposals.slice(0, SHOWN_CHECKS).map(({ check, state, cautions, tells, minutes }) => ({
    check: check.id,
    label: check.label,
    state,
    how: check.how,
    minutes,
    tells: digits(tells),
    cautions,
    ...(check.procedure === undefined ? {} : { procedure: check.procedure }),
  })),
})

function nowOf(given: unknown): PlantState {
  if (given === undefined) return 'stopped'
  const now = plantStates.find((state) => state === given)
  if (now === undefined)
    throw new RefusedInput('now', `${quoted(String(given))} is no state of a plant`, plantStates.join(', '))
  return now
}

async function answerTo(text: string): Promise<Answer> {
  const given = readObject(text)
  const stray = Object.keys(given).find((key) => !FIELDS.includes(key))
  if (stray !== undefined)
    return refused(stray.slice(0, 40), `${quoted(stray)} is not a field`, FIELDS.join(', '))
  const now = nowOf(given['now'])
  const knowledge = knowledgeOf(whichCircuit(given))
  const observations = await readObservations(knowledge, given['observations'])
  const { doubts, ranking, groups, unexplained, verdict, next } = diagnose(
    knowledge,
    observations,
    checkStates(),
    now,
  )
  return {
    json: {
      verdict,
      advice: 'Advice to a qualified person; the engine maker’s manual comes first.',
      questions: doubts.map((doubt) => printedDoubt(knowledge, doubt)),
      notExplained: unexplained.map(({ label, observation: { id, state, value: told } }) => ({
        id,
        state,
        value: told,
        label,
      })),
      causes: ranking.causes
        .filter(({ share }, place) => place < SHOWN_CAUSES && share >= SHOWN_FROM)
        .map((cause) => printedCause(knowledge, ranking, cause)),
      noReadingTellsApart: groups
        .filter(({ causes, share }) => causes.length > 1 && share >= SHOWN_FROM)
        .map(printedGroup),
      shares: {
        ...Object.fromEntries(ranking.causes.map(({ fault, share }) => [fault, share])),
        healthy: ranking.healthy.share,
        'nothing-here-fits': ranking.unknown,
      },
      twoTogether: ranking.pairs
        .filter(({ share }, place) => place < SHOWN_PAIRS && share >= SHOWN_FROM)
        .map(({ faults, share }) => ({ faults, share: digits(share) })),
      ...printedNext(next),
    },
  }
}

export const rankCauses: Command = {
  name: 'rank',
  usage: '',
  summary:
    'reads plant or circuit and observations as JSON and prints causes, shares, reasons and next checks',
  run: async (words, standardInput) => {
    if (words.length > 0) return refused('', '`rank` takes nothing behind it', 'rank')
    try {
      return await answerTo(await standardInput())
    } catch (error) {
      if (error instanceof RefusedInput) return { refusal: error.refusal }
      throw error
    }
  },
}
