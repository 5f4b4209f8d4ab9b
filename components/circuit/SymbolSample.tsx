import { CircuitSymbol } from './symbols/CircuitSymbol.tsx'
import { symbols, type SymbolId } from './symbols/geometry.ts'

const MARGIN = 3
const WIDEST = 76
const TALLEST = 52

/** Rows of like parts are shown by so many of them. */
const SHOWN: Partial<Record<SymbolId, number>> = { 'supply-header': 3, 'return-header': 3 }

/** One symbol by itself, at the size that it has on the sheet unless that is too large for a key. */
export function SymbolSample({ symbol }: { symbol: SymbolId }) {
  const count = SHOWN[symbol] ?? 1
  const { left, top, right, bottom } = symbols[symbol].box(count)
  const width = right - left + 2 * MARGIN
  const height = bottom - top + 2 * MARGIN
  const scale = Math.min(1, WIDEST / width, TALLEST / height)
  return (
    <svg
      class="circuit-sample"
      viewBox={`${left - MARGIN} ${top - MARGIN} ${width} ${height}`}
      width={Math.round(width * scale)}
      height={Math.round(height * scale)}
      aria-hidden="true"
    >
      <CircuitSymbol symbol={symbol} turn={0} count={count} />
    </svg>
  )
}
