import { getCollection } from 'astro:content'
import type { APIRoute } from 'astro'
import { finderOffer } from '../../components/diagnosis/starts.ts'

export async function getStaticPaths() {
  return (await getCollection('circuits')).map(({ id }) => ({ params: { circuit: id } }))
}

/** What the form of this circuit asks and tells: fetched when the page comes to life. */
export const GET: APIRoute = async ({ params: { circuit = '' } }) =>
  new Response(JSON.stringify(await finderOffer(circuit)))
