import { readFigure } from '../quantity/figure.ts'
import type { KindId } from '../quantity/types.ts'
import type { Calculator, InputValue, PublishedCase } from './types.ts'

type Cell = PublishedCase['input'][string]

/** A case is written by an author of the handbook: a mistake in it stops the build or the test. */
function fail(calculator: Calculator, published: PublishedCase, field: string, why: string): never {
  throw new Error(`Calculator ${calculator.id}, case «${published.description}», ${field}: ${why}`)
}

function figure(text: Cell | undefined, kind: KindId, complain: (why: string) => never): number {
  if (typeof text !== 'string') return complain('not a text with a number and a unit')
  const reading = readFigure(text, kind)
  return reading.ok ? reading.si : complain(`${reading.reason}; accepted: ${reading.accepted}`)
}

function readInput(calculator: Calculator, published: PublishedCase, id: string, text: Cell): InputValue {
  const complain = (why: string) => fail(calculator, published, id, why)
  const input = calculator.inputs[id]
  if (!input) return complain('not an input')
  if (input.type === 'quantity') return figure(text, input.kind, complain)
  if (input.type === 'choice') return typeof text === 'string' ? text : complain('not a choice')
  if (typeof text === 'string') return complain('not a table')
  return text.map((row) =>
    Object.fromEntries(
      Object.entries(input.columns).map(([columnId, column]) => [
        columnId,
        figure(row[columnId], column.kind, complain),
      ]),
    ),
  )
}

/**
 * The inputs of a published case in SI, ready for `run`; inputs that the case does not name take their defaults.
 * Throws, naming calculator, case and field, when a figure cannot be read.
 * @param published the case as its source prints it, with units [-]
 */
export function readCase(calculator: Calculator, published: PublishedCase): Record<string, InputValue> {
  return Object.fromEntries(
    Object.keys(calculator.inputs).map((id) => {
      const text = published.input[id]
      return [
        id,
        text === undefined
          ? (calculator.inputs[id]?.default as InputValue)
          : readInput(calculator, published, id, text),
      ]
    }),
  )
}

/**
 * What the source says should come out: SI numbers for quantities, the outcome's name for verdicts.
 * @param published the case as its source prints it, with units [-]
 */
export function readExpected(
  calculator: Calculator,
  published: PublishedCase,
): Record<string, number | string> {
  return Object.fromEntries(
    Object.entries(published.expected).map(([id, text]) => {
      const complain = (why: string) => fail(calculator, published, id, why)
      const output = calculator.outputs[id] ?? complain('not an output')
      return [id, output.type === 'quantity' ? figure(text, output.kind, complain) : text]
    }),
  )
}
