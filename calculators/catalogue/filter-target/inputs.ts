import type { ChoiceInput, Inputs } from '../../calculator/types.ts'
import { LARGEST_SCALE_NUMBER } from '../../cleanliness/iso-4406.ts'

const numbers = Array.from({ length: LARGEST_SCALE_NUMBER + 1 }, (_, number) => ({
  value: String(number),
  label: String(number),
}))

function codeNumber(whose: string, size: number, help: string, number: number): ChoiceInput {
  return {
    type: 'choice',
    label: `${whose}: number for ${size} µm(c)`,
    help,
    options: numbers,
    default: String(number),
  }
}

const NOW = 'The code of the fuel as it is now, or as it is delivered.'
const WANTED = 'The code that the engine maker, or your own rule, asks for.'

export const inputs = {
  now4: codeNumber('Fuel now', 4, NOW, 22),
  now6: codeNumber('Fuel now', 6, NOW, 20),
  now14: codeNumber('Fuel now', 14, NOW, 17),
  wanted4: codeNumber('Target', 4, WANTED, 18),
  wanted6: codeNumber('Target', 6, WANTED, 16),
  wanted14: codeNumber('Target', 14, WANTED, 13),
  passes: {
    type: 'choice',
    label: 'How the fuel meets the filter',
    help: 'Once, as at a delivery; or again and again, as with a loop that takes from the tank and gives back to it.',
    options: [
      { value: 'once', label: 'Once' },
      { value: 'again', label: 'Again and again, from the tank and back' },
    ],
    default: 'once',
  },
  turns: {
    type: 'quantity',
    label: 'Turns of the tank',
    symbol: 'n',
    help: 'Volume that has passed the filter over the volume in the tank: flow times time over volume.',
    kind: 'ratio',
    units: ['1'],
    physical: { minimum: 0.01, maximum: 1e4 },
    default: 7,
    when: { input: 'passes', oneOf: ['again'] },
  },
} as const satisfies Inputs
