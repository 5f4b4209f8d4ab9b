/** A tank open to the air: no lid, the suction pipe to near the bottom, the returns ending above the fuel. */
export function Reservoir() {
  return (
    <g>
      <path class="symbol-body" d="M-120-40V40H120V-40" />
      <path class="symbol-line symbol-thin" d="M-120-14H-88M-72-14H120" />
      <path class="symbol-line symbol-thin" d="M94-25H110L102-14Z" />
      <path class="circuit-line circuit-line-suction" d="M-80-40V26" />
      <path class="circuit-line circuit-line-drain" d="M40-40V-22" />
      <path class="circuit-line circuit-line-return" d="M80-40V-22" />
    </g>
  )
}
