import type { CircuitState, FlowPoint, LineState } from '../../../calculators/circuit/types.ts'
import type { LineLook } from '../FlowLine.tsx'
import type { Scale } from './scale.ts'

/** Speeds of the dashes. The steps are finer where little flows, and each moves in proportion to its flow. */
export const PACES = 8

/** Less than this share of the largest flow in health is no flow to anybody who looks at a drawing. */
const STANDING = 2e-3

/** The finest steps in which computed values are shown; flows as a share of the largest. [SI] */
export const finest = { flowShare: 1e-3, pressure: 100, temperature: 0.1, gas: 1e-3 } as const

/** The largest flow of the healthy circuit, against which the dashes move. [m³/s] */
export const fullFlowOf = (health: CircuitState): number =>
  Math.max(...health.lines.map(({ flow }) => Math.abs(flow)), Number.MIN_VALUE)

/** 0 where fuel stands, else 1 (slow) to PACES. */
export function paceOf(flow: number, fullFlow: number): number {
  const share = Math.abs(flow) / fullFlow
  if (!(share > STANDING)) return 0
  return Math.min(PACES, Math.max(1, Math.round(PACES * Math.sqrt(share))))
}

const middleOf = (from: FlowPoint, to: FlowPoint): FlowPoint => ({
  pressure: (from.pressure + to.pressure) / 2,
  temperature: (from.temperature + to.temperature) / 2,
  gas: (from.gas + to.gas) / 2,
})

const looks = new Map<string, LineLook>()

/** The same object for the same look: a line whose look did not change is not drawn anew. */
function lookOf(shade: LineLook['shade'], pace: number, backward: boolean): LineLook {
  const key = `${shade} ${pace} ${backward}`
  const look = looks.get(key) ?? { shade, pace, backward }
  looks.set(key, look)
  return look
}

/** How the lines look, by their index in the data's connections. */
export function lineLooks(now: CircuitState, scale: Scale, fullFlow: number): ReadonlyMap<number, LineLook> {
  return new Map(
    now.lines.map(({ connection, flow, from, to }: LineState) => [
      connection,
      lookOf(scale.shadeOf(middleOf(from, to)), paceOf(flow, fullFlow), flow < 0),
    ]),
  )
}

/** The shade of each part: that of the fuel which it lets go. */
export function partShades(now: CircuitState, scale: Scale): ReadonlyMap<string, number | 'below'> {
  return new Map(now.parts.map(({ id, out }) => [id, scale.shadeOf(out)]))
}
