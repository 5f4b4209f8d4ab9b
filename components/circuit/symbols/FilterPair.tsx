import { Filter } from './Filter.tsx'
import { LinePiece } from './LinePiece.tsx'

/** Two filters side by side: the flow divides before them and joins behind them. */
export function FilterPair() {
  return (
    <g>
      <LinePiece line="supply" d="M-60 0H-44M44 0H60M-30-34H-44V34H-30M30-34H44V34H30" />
      <circle class="circuit-dot" cx="-44" r="5" />
      <circle class="circuit-dot" cx="44" r="5" />
      <g transform="translate(0-34)">
        <Filter />
      </g>
      <g transform="translate(0 34)">
        <Filter />
      </g>
    </g>
  )
}
