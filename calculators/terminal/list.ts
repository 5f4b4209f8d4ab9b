import { catalogue } from '../catalogue/index.ts'
import type { Command } from './command.ts'
import { refused } from './command.ts'
import { describeCalculator } from './describe.ts'

export const list: Command = {
  name: 'list',
  usage: '',
  summary: 'prints every calculator with its inputs and outputs, as JSON',
  run: async (words) => {
    if (words.length > 0) return refused('', '`list` takes nothing behind it', 'list')
    const calculators = await Promise.all(Object.values(catalogue).map((load) => load()))
    return { json: calculators.map(describeCalculator) }
  },
}
