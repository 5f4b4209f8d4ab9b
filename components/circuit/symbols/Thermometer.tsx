import type { SymbolProps } from '../types.ts'

export function Thermometer({ turn }: Pick<SymbolProps, 'turn'>) {
  return (
    <g>
      <path class="circuit-line circuit-line-gauge" d="M0 0V22" />
      <g transform={`rotate(${-turn})`}>
        <circle class="symbol-body" r="15" />
        <path class="symbol-line" d="M0-10V5" />
        <circle class="symbol-solid" cy="6" r="4" />
      </g>
    </g>
  )
}
