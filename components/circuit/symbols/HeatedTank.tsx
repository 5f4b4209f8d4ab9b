/**
 * A heated tank, open to the air: no lid, the suction pipe to near the bottom, one return under its level. The coil
 * is drawn for this handbook; ISO 1219-1 has no sign for a coil in a reservoir.
 */
export function HeatedTank() {
  return (
    <g>
      <path class="symbol-body" d="M-90-40V40H90V-40" />
      <path class="symbol-line symbol-thin" d="M-90-14H-48M-32-14H32M48-14H90" />
      <path class="symbol-line symbol-thin" d="M60-25H76L68-14Z" />
      <path class="symbol-line" d="M90 8H70V22H56V8H14V22H4V8H-6V22H-16V8H-26M90 30H-26V8" />
      <path class="circuit-line circuit-line-suction" d="M-40-40V26" />
      <path class="circuit-line circuit-line-return" d="M40-40V0" />
    </g>
  )
}
