/**
 * A pressure valve, shut at rest: the arrow stands off the line until the pressure before the valve, led round by
 * the dashed pilot line, pushes it over against the spring.
 */
export function PressureValve() {
  return (
    <g>
      <rect class="symbol-body" x="-16" y="-16" width="32" height="32" />
      <path class="symbol-line" d="M-16 8H8" />
      <path class="symbol-solid" d="M16 8L6 3.5V12.5Z" />
      <path class="symbol-line symbol-thin" d="M0-16L-7-19L7-24L-7-29L7-34L-7-39L0-42" />
      <path class="symbol-line symbol-pilot" d="M-30 0V30H0V16" />
    </g>
  )
}
