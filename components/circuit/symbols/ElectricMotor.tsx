import type { SymbolProps } from '../types.ts'

export function ElectricMotor({ turn }: Pick<SymbolProps, 'turn'>) {
  return (
    <g>
      <circle class="symbol-body" r="20" />
      <text class="symbol-letter" y="6" transform={`rotate(${-turn})`}>
        M
      </text>
    </g>
  )
}
