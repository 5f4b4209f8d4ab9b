import { defineWaking } from '../../layout/waking-element.ts'

defineWaking('circuit-bench', async (element) => (await import('./mount.tsx')).mount(element))
