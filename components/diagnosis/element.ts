import { defineWaking } from '../layout/waking-element.ts'

/** The finder of causes; what it asks comes by a file of the circuit, what it ranks with by another. */
defineWaking('fault-finder', async (element) => (await import('./mount.tsx')).mount(element))
