import type { Situation } from './situation.ts'

/** What changes how a part looks or reads, and nothing of what flows. */
const ONLY_SEEN: ReadonlySet<string> = new Set(['error', 'dirt'])

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
    Object.entries(parameters.values[place] ?? {}).some(
      ([id, value]) => !ONLY_SEEN.has(id) && value !== part.values[id as keyof typeof part.values],
    )
      ? [part.label]
      : [],
  )
  const less = bent.length > 0 ? `Lessen what is wrong at: ${bent.join(', ')}; or choose` : 'Choose'
  const change = `${less} a higher level, a warmer tank or a thinner fuel`
  return `${what} «${label}». ${change}.`
}
