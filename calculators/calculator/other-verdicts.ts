import type { Calculator, Notice, VerdictOutput } from './types.ts'
import type { Surroundings } from './uncertainty.ts'

function noticeOf(
  { label, options }: VerdictOutput,
  verdict: number | string | undefined,
  nearby: ReadonlySet<number | string | undefined>,
  several: boolean,
): Notice[] {
  const others = Object.entries(options).filter(([option]) => option !== verdict && nearby.has(option))
  if (others.length === 0) return []
  const what = others.map(([, option]) => `«${option.label}»`).join(' or ')
  const which = several ? `${label}: within` : 'Within'
  return [{ grade: 'caution', text: `${which} the accuracy of the inputs it could also be: ${what}.` }]
}

/**
 * A notice for each outcome in words that becomes another one when a single input moves by its accuracy. Outcomes
 * that weigh the accuracies themselves are left out.
 * @param centre outputs at the values given [SI]
 */
export function otherVerdicts(
  calculator: Calculator,
  centre: Readonly<Record<string, number | string>>,
  { neighbours }: Surroundings,
): Notice[] {
  const verdicts = Object.entries(calculator.outputs).filter(
    (entry): entry is [string, VerdictOutput] => entry[1].type === 'verdict',
  )
  return verdicts.flatMap(([id, output]) =>
    output.weighsAccuracy
      ? []
      : noticeOf(
          output,
          centre[id],
          new Set(neighbours.flat().map((outputs) => outputs?.[id])),
          verdicts.length > 1,
        ),
  )
}
