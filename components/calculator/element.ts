import { defineWaking } from '../layout/waking-element.ts'

defineWaking('calculator-form', async (element) => (await import('./mount.tsx')).mount(element))
