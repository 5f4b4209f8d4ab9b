import { hydrate } from 'preact'
import type { BenchProps } from './Bench.tsx'
import { fetchData } from './fetch-data.ts'
import type { Preset } from './types.ts'

/**
 * Brings a bench that was rendered at build time to life, with the same values in the same places. The model, the
 * data of the circuit and the form come side by side.
 */
export async function mount(element: HTMLElement): Promise<void> {
  const { source = '', name = '', preset } = element.dataset
  const root = element.querySelector('[data-bench-live]')
  if (root === null) return
  const form = preset === undefined ? whole() : small(JSON.parse(preset) as Preset)
  const [data, { solverOf }, render] = await Promise.all([fetchData(source), import('./solver.ts'), form])
  hydrate(render({ data, htmlId: name, solve: solverOf(data), live: true }), root)
  element.dataset['awake'] = ''
}

async function whole() {
  const { Bench } = await import('./Bench.tsx')
  return (props: BenchProps) => <Bench {...props} />
}

async function small(preset: Preset) {
  const { SmallBench } = await import('./SmallBench.tsx')
  return (props: BenchProps) => <SmallBench {...props} preset={preset} />
}
