import type { Situation } from './situation.ts'

/**
 * Why a state was not found, in a sentence.
 * @param situation that was sought
 * @param worst id of the node or link that did not come to rest
 * @param what is wrong there, up to the place's name
 */
export function reasonOf(
  situation: Situation,
  worst: string,
  what = 'The circuit does not come to rest at',
): string {
  const { model, parameters } = situation
  const link = model.links.find(({ id }) => id === worst)
  const node = model.nodes.find(({ id }) => id === worst)
  const label = (link && model.parts[link.part]?.label) ?? node?.label ?? worst
  const bent = model.parts.flatMap((part, place) =>
    parameters.values[place] === part.values ? [] : [part.label],
  )
  const change =
    bent.length > 0
      ? `Lessen a fault, of which there are some at: ${bent.join(', ')}`
      : 'Choose a warmer tank, a higher level or a thinner fuel'
  return `${what} «${label}». ${change}.`
}
