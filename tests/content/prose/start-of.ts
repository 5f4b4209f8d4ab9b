import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { catalogue } from '../../../calculators/catalogue/index.ts'
import { run } from '../../../calculators/calculator/run.ts'
import type { FuelRecord, InputValue } from '../../../calculators/calculator/types.ts'
import { kindOf } from '../../../calculators/quantity/kinds.ts'
import { readPlain } from '../../../calculators/quantity/read.ts'
import { pairsOf, tagsOf } from '../../../components/content/mdx-pages.ts'
import { fuelRecord } from './plant-and-fuels.ts'

type Results = Record<string, { value: number | string }>

const plant = parse(readFileSync('content/plants/pq-12.yaml', 'utf8')) as {
  setPoints: Record<string, { value: string }>
}

/**
 * What the calculator of an article shows when the page opens; `changed` is what a reader then types, SI. The
 * article is one of content/circuit, or one of another folder that is named with it: 'procedures/draining-water'.
 */
export async function startOf(
  article: string,
  id: string,
  changed: Readonly<Record<string, InputValue>> = {},
): Promise<Results> {
  const tags = tagsOf(
    readFileSync(`content/${article.includes('/') ? article : `circuit/${article}`}.mdx`, 'utf8'),
  )
  const given = tags.find(
    ({ name, attributes }) => name === 'Calculator' && attributes['id'] === id,
  )?.attributes
  const load = catalogue[id]
  if (!given || !load) throw new Error(`${article} has no ${id}`)
  const calculator = await load()
  const texts = Object.entries(pairsOf(given['setPoints'])).map(([input, point]) => [
    input,
    plant.setPoints[point]?.value ?? '',
  ])
  const fuel: FuelRecord | undefined = given['fuel'] === undefined ? undefined : fuelRecord(given['fuel'])
  const values: Record<string, InputValue> = {}
  for (const [input, declared] of Object.entries(calculator.inputs)) values[input] = declared.default
  Object.assign(values, fuel && calculator.fromFuel?.(fuel))
  for (const [input, text] of Object.entries({ ...Object.fromEntries(texts), ...pairsOf(given['preset']) })) {
    const declared = calculator.inputs[input]
    if (declared?.type !== 'quantity') {
      values[input] = String(text)
      continue
    }
    const reading = readPlain(String(text), declared.kind, kindOf(declared.kind).siUnit)
    if (reading.ok !== true) throw new Error(`${input}: ${String(text)}`)
    values[input] = reading.si
  }
  const result = run(calculator, { ...values, ...changed })
  if ('refusal' in result) throw new Error(result.refusal.reason)
  return result.outputs as Results
}

/** The same, without uncertainties. */
export async function plainStartOf(
  article: string,
  id: string,
  changed: Readonly<Record<string, InputValue>> = {},
): Promise<Record<string, number | string>> {
  const outputs = await startOf(article, id, changed)
  return Object.fromEntries(Object.entries(outputs).map(([output, { value }]) => [output, value]))
}
