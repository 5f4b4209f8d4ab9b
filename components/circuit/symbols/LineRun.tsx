import { LinePiece } from './LinePiece.tsx'

/** A length of line that is a part of its own, marked off by a stroke at each end. */
export function LineRun() {
  return (
    <g>
      <LinePiece line="return" d="M-20 0H20" />
      <path class="symbol-line" d="M-20-8V8M20-8V8" />
    </g>
  )
}
