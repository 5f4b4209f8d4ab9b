import { hydrate } from 'preact'
import { Bench } from './Bench.tsx'
import { fetchData } from './fetch-data.ts'
import { SmallBench } from './SmallBench.tsx'
import { solverOf } from './solver.ts'
import type { Preset } from './types.ts'

/** Brings a bench that was rendered at build time to life, with the same values in the same places. */
export async function mount(element: HTMLElement): Promise<void> {
  const { source = '', name = '', preset } = element.dataset
  const root = element.querySelector('[data-bench-live]')
  if (root === null) return
  const data = await fetchData(source)
  const shared = { data, htmlId: name, solve: solverOf(data), live: true }
  hydrate(
    preset === undefined ? (
      <Bench {...shared} />
    ) : (
      <SmallBench {...shared} preset={JSON.parse(preset) as Preset} />
    ),
    root,
  )
  element.dataset['awake'] = ''
}
