/** A circle with the two curves of a flow indicator: here a window in the line. */
export function SightGlass() {
  return (
    <g>
      <circle class="symbol-body" r="20" />
      <path class="symbol-line" d="M-14.5-13.5Q0-1 14.5-13.5M-14.5 13.5Q0 1 14.5 13.5" />
    </g>
  )
}
