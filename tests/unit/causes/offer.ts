import { tellables } from '../../../calculators/diagnosis/index.ts'
import { gaugeSpecs } from '../../../components/diagnosis/finder-state.ts'
import type { FinderOffer } from '../../../components/diagnosis/types.ts'
import { knowledge } from '../diagnosis/pq12.ts'

const state = (title: string) => ({ title, words: `${title}.`, cautions: [] })

/** The form of the PQ-12, made of the same data as the page's; only what the build adds as links is left out. */
export const offer: FinderOffer = {
  circuit: 'pq-12',
  title: 'Fuel circuit of the PQ-12',
  invented: true,
  questions: tellables(knowledge),
  checks: knowledge.checks
    .filter(({ circuits }) => circuits.includes('pq-12'))
    .map(({ id, label, kind, minutes, how, states, glasses, readings, feels }) => ({
      id,
      label,
      kind,
      minutes,
      how,
      states,
      glasses,
      readings,
      feels,
      cautions: [],
    })),
  states: {
    stopped: state('Stopped'),
    priming: state('Priming'),
    idle: state('Idle'),
    part: state('Part load'),
    full: state('Full load'),
  },
  causes: knowledge.faults
    .filter(({ id }) => Object.hasOwn(knowledge.signatures.faults, id))
    .map(({ id, title }) => ({
      id,
      title,
      confirm: '',
      cautions: [],
      procedure: { title: '', href: '/' },
    })),
  starts: { 'bubbles-when-priming': { title: 'Bubbles when priming', href: '/', asks: [] } },
  cautionsHref: '/cautions/',
  benchHref: '/bench/pq-12/',
}

export const specs = gaugeSpecs(offer.questions)
