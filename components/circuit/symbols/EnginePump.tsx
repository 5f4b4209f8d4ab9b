import type { SymbolProps } from '../types.ts'
import { Pump } from './Pump.tsx'

/** A pump with its shaft to the engine; the square with the letter is the prime mover that is no electric motor. */
export function EnginePump({ turn }: Pick<SymbolProps, 'turn'>) {
  return (
    <g>
      <path class="symbol-line" d="M-3-20V-34M3-20V-34" />
      <Pump />
      <rect class="symbol-body" x="-14" y="-62" width="28" height="28" />
      <text class="symbol-letter" y="6" transform={`translate(0-48)rotate(${-turn})`}>
        M
      </text>
    </g>
  )
}
