import { getCollection, type CollectionEntry } from 'astro:content'
import type { Tellable } from '../../calculators/diagnosis/index.ts'
import { href } from '../layout/href.ts'
import { CIRCUIT_KEY } from './address.ts'
import { askedOf, keyOf, questionsNamed } from './keys.ts'
import { circuitChoices, formOffer, questionsOf } from './load-finder.ts'
import type { FinderOffer, StartOffer } from './types.ts'

type Start = CollectionEntry<'starts'>
type Given = Start['data']['given']

/** One way from a symptom's page to the finder. */
export interface StartLink {
  /** What is seen, where the page holds more than one thing; else empty. */
  readonly words: string
  readonly href: string
}

/** What is given in each of the ways of a symptom. */
function waysOf({ data: { given, either } }: Start): { readonly words: string; readonly given: Given }[] {
  return (
    either?.map((way) => ({ words: way.words, given: [...given, ...way.given] })) ?? [{ words: '', given }]
  )
}

/** Whether a circuit can show all that is given. */
function canTell(questions: readonly Tellable[], given: Given): boolean {
  const known = askedOf(questions)
  return given.every((one) => known.has(keyOf(one.id, one.state)))
}

/** Keys of what a symptom asks of a circuit; none of what the circuit does not have. */
function keysAsked(questions: readonly Tellable[], { data }: Start): string[] {
  const known = askedOf(questions)
  return data.ask
    .flatMap(({ id, state }) => questionsNamed(questions, id).map((question) => keyOf(question.id, state)))
    .filter((key) => known.has(key))
}

/** Whether a circuit can show the symptom in one of its ways. */
const startsHere = (questions: readonly Tellable[], start: Start): boolean =>
  waysOf(start).some(({ given }) => canTell(questions, given))

/** The symptoms from which one can start on a circuit, by id. */
async function startsOn(questions: readonly Tellable[]): Promise<Record<string, StartOffer>> {
  const symptoms = await getCollection('symptoms')
  const starts = await getCollection('starts')
  return Object.fromEntries(
    starts
      .filter((start) => startsHere(questions, start))
      .map((start) => {
        const title = symptoms.find(({ id }) => id === start.id)?.data.title
        if (title === undefined)
          throw new Error(
            `content/diagnosis/starts.yaml: «${start.id}» is not an id of content/symptoms; allowed: ${symptoms.map(({ id }) => id).join(', ')}`,
          )
        return [start.id, { title, href: href(`/symptoms/${start.id}/`), asks: keysAsked(questions, start) }]
      }),
  )
}

/**
 * Addresses of the finder with a symptom given, each on the first circuit that can show it.
 * @param symptom its id
 * @returns one for each way; none for a symptom that cannot be told
 */
export async function startLinks(symptom: string): Promise<StartLink[]> {
  const start = (await getCollection('starts')).find(({ id }) => id === symptom)
  if (start === undefined) return []
  const circuits = await circuitChoices()
  const known = await Promise.all(circuits.map(async ({ id }) => ({ id, questions: await questionsOf(id) })))
  return waysOf(start).flatMap(({ words, given }) => {
    const circuit = known.find(({ questions }) => canTell(questions, given))
    if (circuit === undefined) return []
    const query = new URLSearchParams({
      v: '1',
      ...(circuit.id === circuits[0]?.id ? {} : { [CIRCUIT_KEY]: circuit.id }),
      from: symptom,
      ...Object.fromEntries(given.map((one) => [keyOf(one.id, one.state), one.value])),
    })
    return [{ words, href: href(`/causes/?${query}`) }]
  })
}

/** All that the form of a circuit needs. */
export async function finderOffer(circuit: string): Promise<FinderOffer> {
  const form = await formOffer(circuit)
  return { ...form, starts: await startsOn(form.questions) }
}
