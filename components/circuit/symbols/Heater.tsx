/** A diamond with its triangles pointing in: heat is brought to the fuel. */
export function Heater() {
  return (
    <g>
      <path class="symbol-body" d="M-30 0L0-30L30 0L0 30Z" />
      <path class="symbol-line" d="M0-30V-14M0 30V14" />
      <path class="symbol-solid" d="M0-5L-5.5-16H5.5ZM0 5L-5.5 16H5.5Z" />
    </g>
  )
}
