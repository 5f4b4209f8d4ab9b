import { LinePiece } from './LinePiece.tsx'

/**
 * A heated tank, open to the air: no lid, the suction pipe to near the bottom, one return under its level. The coil
 * is drawn for this handbook; ISO 1219-1 has no sign for a coil in a reservoir.
 */
export function HeatedTank() {
  return (
    <g>
      <path class="symbol-body" d="M-90-40V40H90V-40" />
      <path class="symbol-line symbol-thin" d="M-90-14H-58M-42-14H42M58-14H90" />
      <path class="symbol-line symbol-thin" d="M64-25H80L72-14Z" />
      <path class="symbol-line" d="M90 8H-30V19H70V30H90" />
      <LinePiece line="suction" d="M-50-40V26" />
      <LinePiece line="return" d="M50-40V-2" />
    </g>
  )
}
