import { hydrate } from 'preact'
import { ConverterForm } from './ConverterForm.tsx'

/** Brings the converter to life with what somebody may have typed before its script was there. */
export function mount(element: HTMLElement): void {
  const root = element.querySelector('[data-converter-live]')
  if (root === null) return
  const field = element.querySelector<HTMLInputElement>('input[name="value"]')
  const early = field && field.value !== field.defaultValue ? field.value : undefined
  hydrate(<ConverterForm htmlId="converter" live early={early} />, root)
  element.dataset['awake'] = ''
}
