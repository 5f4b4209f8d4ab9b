import type { SymbolProps } from '../types.ts'
import { HEADER_END, halfRow, PITCH } from './geometry.ts'

/** A wide pipe with a branch to each of so many like parts. */
export function Header({ count, line }: Pick<SymbolProps, 'count'> & { line: 'supply' | 'return' }) {
  const half = halfRow(count) + HEADER_END
  return (
    <g>
      <rect class={`circuit-header circuit-header-${line}`} x={-half} y="-4" width={2 * half} height="8" />
      {Array.from({ length: count }, (_, index) => (
        <circle key={index} class="circuit-dot" cx={index * PITCH - halfRow(count)} r="4" />
      ))}
    </g>
  )
}
