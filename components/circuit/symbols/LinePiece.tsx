import type { LineKind } from '../types.ts'

/** A piece of line inside a symbol; under it the edge that a line has in a circuit that runs. */
export function LinePiece({ line, d }: { line?: LineKind; d: string }) {
  return (
    <>
      <path class={`symbol-casing ${line ? `circuit-casing-${line}` : ''}`} d={d} />
      <path class={`circuit-line ${line ? `circuit-line-${line}` : ''}`} d={d} />
    </>
  )
}
