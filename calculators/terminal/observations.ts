import { kindOf } from '../quantity/kinds.ts'
import type { Command } from './command.ts'
import { refused } from './command.ts'
import { idsOf } from './content.ts'
import { knowledgeOf } from './knowledge.ts'
import { tellables } from '../diagnosis/tellables.ts'

export const observations: Command = {
  name: 'observations',
  usage: '[CIRCUIT]',
  summary: 'prints what can be told of a circuit (pq-12): ids, states and allowed values, as JSON',
  run: ([circuit = 'pq-12', ...others]) => {
    const known = idsOf('circuits')
    if (others.length > 0 || !known.includes(circuit))
      return Promise.resolve(
        refused('circuit', `«${circuit.slice(0, 40)}» is not a circuit`, known.join(', ')),
      )
    const json = tellables(knowledgeOf(circuit)).map(({ id, label, states, values, kind, accuracy }) => ({
      id,
      label,
      states,
      ...(values ? { values } : {}),
      ...(kind ? { unit: kindOf(kind).siUnit, accuracy } : {}),
    }))
    return Promise.resolve({ json })
  },
}
