import type { SymbolProps } from '../types.ts'

/** The circle of a measuring instrument of ISO 1219-1; the Greek letter for kinematic viscosity in it is ours. */
export function Viscometer({ turn }: Pick<SymbolProps, 'turn'>) {
  return (
    <g>
      <path class="circuit-line circuit-line-gauge" d="M0 0V22" />
      <g transform={`rotate(${-turn})`}>
        <circle class="symbol-body" r="15" />
        <text class="symbol-letter" y="5">
          ν
        </text>
      </g>
    </g>
  )
}
