/**
 * A vessel in which new and returning fuel meet: the capsule that ISO 1219-1 uses for a vessel under pressure, upright,
 * with ports for four lines, which are ours.
 */
export function MixingColumn() {
  return (
    <g>
      <rect class="symbol-body" x="-24" y="-50" width="48" height="100" rx="24" />
      <path class="symbol-line symbol-thin" d="M-24-22H24" />
      <path class="symbol-line symbol-thin" d="M-8-33H8L0-22Z" />
    </g>
  )
}
