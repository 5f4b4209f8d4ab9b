/** A circle of one module, its filled triangle pointing out with the fuel. */
export function Pump() {
  return (
    <g>
      <circle class="symbol-body" r="20" />
      <path class="symbol-solid" d="M20 0L7-9V9Z" />
    </g>
  )
}
