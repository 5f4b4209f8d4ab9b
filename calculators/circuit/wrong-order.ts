import { spoken } from './accepted.ts'
import type { PartKindId } from './part-kinds.ts'
import type { Values } from './parameters.ts'

/** A figure of a part that does not go with another one of it. */
export interface WrongOrder {
  readonly parameter: keyof Values
  readonly message: string
  readonly accepted: string
}

const pressure = (value: number): string => spoken(value, { kind: 'gaugePressure' })
const length = (value: number): string => spoken(value, { kind: 'length' })

/**
 * Figures of a part that must lie in one order and do not.
 * @param part its kind, its label and its figures in SI
 * @returns each with a sentence that names both
 */
export function wrongOrders(part: {
  readonly kind: PartKindId
  readonly label: string
  readonly values: Values
}): WrongOrder[] {
  const { kind, label, values } = part
  const { cracking, fullFlowPressure, mouth, depth, elements, shutElements } = values
  if (kind === 'spring-valve' && cracking >= fullFlowPressure)
    return [
      {
        parameter: 'cracking',
        message: `${label}: the cracking pressure, ${pressure(cracking)}, is not below the pressure at full flow, ${pressure(fullFlowPressure)}`,
        accepted: `below ${pressure(fullFlowPressure)}`,
      },
    ]
  if (kind === 'tank' && mouth >= depth)
    return [
      {
        parameter: 'mouth',
        message: `${label}: the suction mouth, ${length(mouth)} above the floor, is not below the full level, ${length(depth)}`,
        accepted: `below ${length(depth)}`,
      },
    ]
  if (kind === 'filter' && shutElements > elements)
    return [
      {
        parameter: 'shutElements',
        message: `${label}: ${shutElements} shut elements of ${elements}`,
        accepted: `0 to ${elements}`,
      },
    ]
  return []
}
