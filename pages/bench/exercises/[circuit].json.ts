import { getCollection } from 'astro:content'
import type { APIRoute } from 'astro'
import { circuitOffer } from '../../../components/exercise/load-exercise.ts'

export async function getStaticPaths() {
  return (await getCollection('circuits')).map(({ id }) => ({ params: { circuit: id } }))
}

/** What the exercises on this circuit share: fetched when the first of them comes to life. */
export const GET: APIRoute = async ({ params: { circuit = '' } }) =>
  new Response(JSON.stringify(await circuitOffer(circuit)))
