import { readFileSync } from 'node:fs'
import { runPlain } from '../../../calculators/calculator/run.ts'
import type { InputValue } from '../../../calculators/calculator/types.ts'
import { catalogue } from '../../../calculators/catalogue/index.ts'
import { kindOf } from '../../../calculators/quantity/kinds.ts'
import { readPlain } from '../../../calculators/quantity/read.ts'
import { pairsOf, tagsOf } from './mdx-pages.ts'
import { fuelRecord, setPoint } from './plant-and-fuels.ts'

/**
 * What a calculator gives with the values that an article starts it with, choices included; others may be put over
 * them [SI].
 */
export async function startOf(
  article: string,
  id: string,
  other: Readonly<Record<string, InputValue>> = {},
): Promise<Readonly<Record<string, number | string>>> {
  const tags = tagsOf(readFileSync(`content/circuit/${article}.mdx`, 'utf8'))
  const given = tags.find(({ name, attributes }) => name === 'Calculator' && attributes['id'] === id)
  const load = catalogue[id]
  if (!given || !load) throw new Error(`${article} has no ${id}`)
  const calculator = await load()
  const { fuel, setPoints, preset } = given.attributes
  const values: Record<string, InputValue> = {}
  if (fuel !== undefined) Object.assign(values, calculator.fromFuel?.(fuelRecord(fuel)))
  for (const [input, point] of Object.entries(pairsOf(setPoints))) values[input] = setPoint(point)
  for (const [input, text] of Object.entries(pairsOf(preset))) {
    const declared = calculator.inputs[input]
    const reading =
      declared?.type === 'quantity' ? readPlain(text, declared.kind, kindOf(declared.kind).siUnit) : undefined
    if (declared?.type === 'quantity' && reading?.ok !== true) throw new Error(`${input}: ${text}`)
    values[input] = reading?.ok === true ? reading.si : text
  }
  const result = runPlain(calculator, { ...values, ...other })
  if ('refusal' in result) throw new Error(result.refusal.reason)
  return result.outputs
}
