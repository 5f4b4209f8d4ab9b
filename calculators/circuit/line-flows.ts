import type { CircuitData } from './types.ts'
import { splitEnd } from './validate.ts'

/** A link that counts in the flow of a line, and which way. */
export interface Counted {
  readonly link: number
  readonly sign: 1 | -1
}

/**
 * The links that make up the flow of each connection: its own, or between two tees, which have none, what the other
 * lines at a tee take away less what they bring.
 * @param circuit the data
 * @param own the link that a connection has of its own, in the order of the connections
 * @returns the links of each; none where no fuel goes
 */
export function lineFlows(
  circuit: Pick<CircuitData, 'connections'>,
  own: readonly (number | undefined)[],
): readonly (readonly Counted[])[] {
  const { connections } = circuit
  const ids = connections.map(({ from, to, line }) => ({
    from: splitEnd(from)[0],
    to: splitEnd(to)[0],
    fuel: line !== 'gauge' && line !== 'shaft',
  }))
  /** Flow along a line, looked for beyond the one of its ends. @param before lines that led here */
  const along = (line: number, end: 'from' | 'to', before: readonly number[]): readonly Counted[] => {
    const link = own[line]
    if (link !== undefined) return [{ link, sign: 1 }]
    const tee = ids[line]?.[end]
    const led = [...before, line]
    return ids.flatMap(({ from, to, fuel }, other) => {
      if (!fuel || led.includes(other) || (from !== tee && to !== tee)) return []
      const away = from === tee
      const same = away === (end === 'to')
      return along(other, away ? 'to' : 'from', led).map((one) => (same ? one : turned(one)))
    })
  }
  return connections.map((_, line) => (ids[line]?.fuel ? along(line, 'to', []) : []))
}

const turned = ({ link, sign }: Counted): Counted => ({ link, sign: sign === 1 ? -1 : 1 })
