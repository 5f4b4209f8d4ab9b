import type { Command } from './command.ts'
import { refused } from './command.ts'
import { allFaults } from './content.ts'

export const faults: Command = {
  name: 'faults',
  usage: '',
  summary: 'prints every fault with what it bends in each circuit, as JSON',
  run: (words) => {
    if (words.length > 0) return Promise.resolve(refused('', '`faults` takes nothing behind it', 'faults'))
    const json = allFaults().map(({ id, title, frequency, bends }) => ({
      id,
      title,
      frequency,
      circuits: Object.keys(bends),
      bends,
    }))
    return Promise.resolve({ json })
  },
}
