import { LinePiece } from './LinePiece.tsx'

/** A tank open to the air: no lid, the suction pipe to near the bottom, the returns ending under its level, so that they draw no air down. */
export function Reservoir() {
  return (
    <g>
      <path class="symbol-body" d="M-120-40V40H120V-40" />
      <path class="symbol-line symbol-thin" d="M-120-14H-88M-72-14H32M48-14H72M88-14H120" />
      <path class="symbol-line symbol-thin" d="M94-25H110L102-14Z" />
      <LinePiece line="suction" d="M-80-40V26" />
      <LinePiece line="drain" d="M40-40V12" />
      <LinePiece line="return" d="M80-40V12" />
    </g>
  )
}
