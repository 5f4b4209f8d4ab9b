import type { Grade } from '../../calculators/calculator/types.ts'

/** A shape of its own for each grade, so that colour is never the only sign. */
const shapes: Readonly<Record<Grade, string>> = {
  good: 'M3 8.5 6.5 12 13 4.5',
  information: 'M8 7v5M8 4v.5',
  caution: 'M8 1.5 15 14H1ZM8 6v4M8 11.7v.3',
  action: 'M5 1.5h6L14.5 5v6L11 14.5H5L1.5 11V5ZM5 5l6 6M11 5l-6 6',
}

export function Sign({ grade }: { grade: Grade }) {
  return (
    <svg
      class={`sign sign-${grade}`}
      viewBox="0 0 16 16"
      width="16"
      height="16"
      aria-hidden="true"
      focusable="false"
    >
      {grade === 'information' && <circle cx="8" cy="8" r="6.5" />}
      <path d={shapes[grade]} />
    </svg>
  )
}
