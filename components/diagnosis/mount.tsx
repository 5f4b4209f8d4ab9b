import { render } from 'preact'
import { CIRCUIT_KEY } from './address.ts'
import { Finder } from './Finder.tsx'
import type { CircuitChoice, FinderOffer } from './types.ts'

/** Brings the finder to life with the circuit that the address names, or the first. */
export async function mount(element: HTMLElement): Promise<void> {
  const { circuits: listed = '[]', name = '' } = element.dataset
  const root = element.querySelector('[data-finder-live]')
  if (root === null) return
  const circuits = JSON.parse(listed) as CircuitChoice[]
  const wanted = new URLSearchParams(location.search).get(CIRCUIT_KEY)
  const chosen = circuits.find(({ id }) => id === wanted) ?? circuits[0]
  if (chosen === undefined) return
  const response = await fetch(chosen.offer)
  if (!response.ok) throw new Error(`${chosen.offer}: ${response.status}`)
  const offer = (await response.json()) as FinderOffer
  render(<Finder htmlId={name} offer={offer} circuits={circuits} />, root)
  element.dataset['awake'] = ''
}
