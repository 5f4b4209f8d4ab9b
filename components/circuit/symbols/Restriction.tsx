import { LinePiece } from './LinePiece.tsx'

/** A narrow place whose drop depends on the viscosity. */
export function Restriction() {
  return (
    <g>
      <LinePiece d="M-20 0H20" />
      <path class="symbol-line" d="M-14-11C-6-3 6-3 14-11M-14 11C-6 3 6 3 14 11" />
    </g>
  )
}
