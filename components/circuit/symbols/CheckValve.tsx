import { LinePiece } from './LinePiece.tsx'

/** A ball on its seat: fuel passes from left to right only. */
export function CheckValve() {
  return (
    <g>
      <LinePiece d="M-20 0H-10M7 0H20" />
      <path class="symbol-line" d="M3-12L-10 0L3 12" />
      <circle class="symbol-body" cx="0" r="7" />
    </g>
  )
}
