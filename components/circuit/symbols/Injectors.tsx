import type { SymbolProps } from '../types.ts'
import { halfRow, PITCH } from './geometry.ts'

/**
 * So many injectors or injection pumps in a row, each a block of its own: fuel in at the left through the inlet
 * strainer, out at the right through the return filter, the nozzle below.
 */
export function Injectors({ turn, count }: SymbolProps) {
  return (
    <g>
      {Array.from({ length: count }, (_, index) => (
        <g key={index} transform={`translate(0 ${index * PITCH - halfRow(count)})`}>
          <rect class="symbol-body symbol-slim" x="-40" y="-9" width="80" height="18" />
          <path class="symbol-line symbol-dashed-fine" d="M-28-9V9M28-9V9" />
          <path class="symbol-solid" d="M12 9H24L18 17Z" />
          <text class="symbol-letter" y="5.5" transform={`translate(-6 0)rotate(${-turn})`}>
            {index + 1}
          </text>
        </g>
      ))}
    </g>
  )
}
