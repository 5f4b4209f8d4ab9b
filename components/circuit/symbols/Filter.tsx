/** A diamond with the dashed line of its element across the flow. */
export function Filter() {
  return (
    <g>
      <path class="symbol-body" d="M-30 0L0-30L30 0L0 30Z" />
      <path class="symbol-line symbol-dashed" d="M0-30V30" />
    </g>
  )
}
