import { getCollection } from 'astro:content'
import type { APIRoute } from 'astro'
import { packedKnowledgeOf } from '../../../components/diagnosis/load-finder.ts'

export async function getStaticPaths() {
  return (await getCollection('circuits')).map(({ id }) => ({ params: { circuit: id } }))
}

/** What the ranking of this circuit's causes rests on: fetched by the worker. */
export const GET: APIRoute = async ({ params: { circuit = '' } }) =>
  new Response(JSON.stringify(await packedKnowledgeOf(circuit)))
