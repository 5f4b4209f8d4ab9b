import type { LineKind } from '../types.ts'

/** A piece of line inside a symbol; under it the edge that a line has in a circuit that runs. */
export function LinePiece({ line, d }: { line?: LineKind; d: string }) {
  return (
    <>
      <path class={line ? `symbol-casing circuit-casing-${line}` : 'symbol-casing'} d={d} />
      <path class={line ? `circuit-line circuit-line-${line}` : 'circuit-line'} d={d} />
    </>
  )
}
