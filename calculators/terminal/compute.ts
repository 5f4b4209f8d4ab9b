import { catalogue } from '../catalogue/index.ts'
import { isQuantityResult, run } from '../calculator/run.ts'
import type { ResultValue } from '../calculator/run.ts'
import type { Calculator, Step } from '../calculator/types.ts'
import { kindOf } from '../quantity/kinds.ts'
import type { Answer, Command } from './command.ts'
import { quoted, refused } from './command.ts'
import { readAccuracies, readInputs, readObject, RefusedInput } from './read-inputs.ts'

function printedOutput(calculator: Calculator, id: string, result: ResultValue | undefined) {
  const output = calculator.outputs[id]
  if (output?.type !== 'quantity' || !isQuantityResult(result)) return { value: result?.value }
  const { value, uncertainty = null, uncertaintyMethod, uncertaintyNote } = result
  return {
    value,
    unit: kindOf(output.kind).siUnit,
    uncertainty,
    ...(uncertaintyMethod ? { uncertaintyMethod } : {}),
    ...(uncertaintyNote ? { uncertaintyNote } : {}),
  }
}

function printedStep({ label, symbol, rule, value, kind }: Step) {
  return { label, symbol, rule, value, unit: kindOf(kind).siUnit }
}

/**
 * What a calculator answers to a JSON object of inputs.
 * @param text the object: numbers in SI, texts with units or arithmetic, choices, tables as arrays of objects;
 * `accuracies` holds half-widths by input [-]
 */
export async function answerOf(calculator: Calculator, text: string): Promise<Answer> {
  try {
    const { accuracies, ...given } = readObject(text)
    const values = await readInputs(calculator, given)
    const result = run(calculator, values, await readAccuracies(calculator, accuracies, values))
    if ('refusal' in result) return result
    const outputs = Object.keys(calculator.outputs).map((id) => [
      id,
      printedOutput(calculator, id, result.outputs[id]),
    ])
    return {
      json: {
        outputs: Object.fromEntries(outputs),
        steps: result.steps.map(printedStep),
        notices: result.notices,
      },
    }
  } catch (error) {
    if (error instanceof RefusedInput) return { refusal: error.refusal }
    throw error
  }
}

export const compute: Command = {
  name: 'compute',
  usage: 'ID',
  summary: 'reads a JSON object of inputs from standard input and prints outputs, steps and notices, as JSON',
  run: async (words, standardInput) => {
    const [id, ...more] = words
    const known = Object.keys(catalogue).join(', ')
    if (id === undefined) return refused('', '`compute` needs the id of a calculator', known)
    if (more.length > 0) return refused('', `${quoted(more.join(' '))} is one word too many`, 'compute ID')
    const load = Object.hasOwn(catalogue, id) ? catalogue[id] : undefined
    if (!load) return refused('', `${quoted(id)} is not a calculator`, known)
    return answerOf(await load(), await standardInput())
  },
}
