import { hydrate } from 'preact'
import { catalogue } from '../../calculators/catalogue/index.ts'
import type { Place } from './address.ts'
import { CalculatorForm } from './CalculatorForm.tsx'
import type { Starting } from './state.ts'
import type { SourceLine } from './summary.ts'

const prefixOf = (element: Element): string => `${element.getAttribute('data-name')}.`

/** Where the calculator stands among the others of its page. */
function placeOf(element: HTMLElement): Place {
  const all = [...document.querySelectorAll('calculator-form')]
  return {
    prefix: prefixOf(element),
    alone: all.length === 1,
    first: all[0] === element,
    others: all.filter((other) => other !== element).map(prefixOf),
  }
}

/** Texts that differ from what was rendered: somebody was quicker than the script. */
function typedEarly(element: HTMLElement): Record<string, string> {
  const fields = element.querySelectorAll<HTMLInputElement>('input[type="text"][name]')
  return Object.fromEntries(
    [...fields]
      .filter((field) => field.value !== field.defaultValue)
      .map((field) => [field.name, field.value]),
  )
}

/** Brings a calculator that was rendered at build time to life, with the same values in the same places. */
export async function mount(element: HTMLElement): Promise<void> {
  const { calculator: id = '', name = '', starting = '{}', sources = '[]' } = element.dataset
  const root = element.querySelector('[data-calculator-live]')
  const load = catalogue[id]
  if (root === null || load === undefined) return
  const calculator = await load()
  hydrate(
    <CalculatorForm
      calculator={calculator}
      starting={JSON.parse(starting) as Starting}
      sources={JSON.parse(sources) as SourceLine[]}
      htmlId={name}
      live={{ place: placeOf(element), early: typedEarly(element) }}
    />,
    root,
  )
  element.dataset['awake'] = ''
}
