import { getCollection } from 'astro:content'
import type { APIRoute } from 'astro'
import { benchDataOf } from '../../components/circuit/bench/bench-data.ts'

export async function getStaticPaths() {
  return (await getCollection('circuits')).map(({ id }) => ({ params: { circuit: id } }))
}

/** What a bench of this circuit fetches when it comes to life. */
export const GET: APIRoute = async ({ params: { circuit = '' } }) =>
  new Response(JSON.stringify(await benchDataOf(circuit)))
