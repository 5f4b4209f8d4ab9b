import type { BenchData } from './types.ts'

const fetched = new Map<string, Promise<BenchData>>()

/** The data of a circuit, fetched once a page however many benches stand on it. */
export function fetchData(address: string): Promise<BenchData> {
  const known = fetched.get(address)
  if (known !== undefined) return known
  const coming = fetch(address).then((response) => {
    if (!response.ok) throw new Error(`${address}: ${response.status}`)
    return response.json() as Promise<BenchData>
  })
  fetched.set(address, coming)
  return coming
}
