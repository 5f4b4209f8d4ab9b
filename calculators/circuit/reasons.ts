import type { Role } from './model.ts'
import type { CylinderParameter } from './parameters.ts'
import { partKinds, type Parameter } from './part-kinds.ts'
import type { Situation } from './situation.ts'

/** What changes how a part looks or reads, and nothing of what flows. */
const ONLY_SEEN: ReadonlySet<string> = new Set(['error', 'dirt'])

const cylinderParameters = Object.entries<Parameter>(partKinds.injectors.parameters).flatMap(
  ([id, { eachCylinder }]) => (eachCylinder ? [id as CylinderParameter] : []),
)

/** 'cylinder 3', 'cylinders 3 and 7'. */
function cylindersOf(numbers: readonly number[]): string {
  const last = numbers.at(-1) ?? 0
  return numbers.length === 1
    ? `cylinder ${last}`
    : `cylinders ${numbers.slice(0, -1).join(', ')} and ${last}`
}

/** Parts whose figures are not those of health, single cylinders by their numbers. */
function bentParts({ model, parameters }: Situation): string[] {
  const health = model.parts[model.injectors]?.values
  const bent = Array.from({ length: model.cylinders }, (_, place) => place).filter((place) =>
    cylinderParameters.some((id) => parameters.ofCylinder(id, place) !== health?.[id]),
  )
  return model.parts.flatMap((part, place): string[] => {
    if (place === model.injectors && bent.length > 0)
      return [
        bent.length === model.cylinders
          ? part.label
          : `${part.label}, ${cylindersOf(bent.map((one) => one + 1))}`,
      ]
    return Object.entries(parameters.values[place] ?? {}).some(
      ([id, value]) => !ONLY_SEEN.has(id) && value !== part.values[id as keyof typeof part.values],
    )
      ? [part.label]
      : []
  })
}

/** Links that each cylinder has of its own. */
const ofCylinder: ReadonlySet<Role> = new Set<Role>(['inlet-strainer', 'passage', 'metering'])

/** Name of a node or a link of the net, one cylinder's by its number. */
function placeName({ model, topology }: Situation, id: string): string {
  const link = model.links.find((one) => one.id === id)
  const node = model.nodes.findIndex((one) => one.id === id)
  const inlet = topology.inlets.indexOf(node)
  const cylinder = link && ofCylinder.has(link.role) ? link.place : inlet
  const label = (link && model.parts[link.part]?.label) ?? model.nodes[node]?.label ?? id
  return cylinder >= 0 ? `${label}, ${cylindersOf([cylinder + 1])}` : label
}

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
  const bent = bentParts(situation)
  const less = bent.length > 0 ? `Lessen what is wrong at: ${bent.join('; ')}; or choose` : 'Choose'
  const change = `${less} a higher level, a warmer tank or a thinner fuel`
  return `${what} «${placeName(situation, worst)}». ${change}.`
}
