import { getCollection, type CollectionEntry } from 'astro:content'
import type { Tellable } from '../../calculators/diagnosis/index.ts'
import { href } from '../layout/href.ts'
import { CIRCUIT_KEY } from './address.ts'
import { askedOf, keyOf, questionsNamed } from './keys.ts'
import { circuitChoices, formOffer, questionsOf } from './load-finder.ts'
import type { FinderOffer, StartOffer } from './types.ts'

type Start = CollectionEntry<'starts'>

/** Keys of what a symptom asks of a circuit; none of what the circuit does not have. */
function keysAsked(questions: readonly Tellable[], { data }: Start): string[] {
  const known = askedOf(questions)
  return data.ask
    .flatMap(({ id, state }) => questionsNamed(questions, id).map((question) => keyOf(question.id, state)))
    .filter((key) => known.has(key))
}

/** Whether a circuit can show the symptom: all that is given, and one at least of what is asked. */
function startsHere(questions: readonly Tellable[], start: Start): boolean {
  const known = askedOf(questions)
  const { given, ask } = start.data
  return (
    given.every((one) => known.has(keyOf(one.id, one.state))) &&
    (ask.length === 0 || keysAsked(questions, start).length > 0)
  )
}

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
 * Address of the finder with a symptom given, on the first circuit that can show it.
 * @param symptom its id
 * @returns nothing for a symptom that cannot be told
 */
export async function startAddress(symptom: string): Promise<string | undefined> {
  const start = (await getCollection('starts')).find(({ id }) => id === symptom)
  if (start === undefined) return undefined
  const circuits = await circuitChoices()
  for (const { id } of circuits) {
    if (!startsHere(await questionsOf(id), start)) continue
    const query = new URLSearchParams({
      v: '1',
      ...(id === circuits[0]?.id ? {} : { [CIRCUIT_KEY]: id }),
      from: symptom,
      ...Object.fromEntries(start.data.given.map((one) => [keyOf(one.id, one.state), one.value])),
    })
    return href(`/causes/?${query}`)
  }
  return undefined
}

/** All that the form of a circuit needs. */
export async function finderOffer(circuit: string): Promise<FinderOffer> {
  const form = await formOffer(circuit)
  return { ...form, starts: await startsOn(form.questions) }
}
