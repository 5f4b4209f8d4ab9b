import { CircuitSymbol } from './symbols/CircuitSymbol.tsx'
import { symbols, type SymbolId } from './symbols/geometry.ts'

const MARGIN = 3
const STUB = 16
const WIDEST = 88
const TALLEST = 52

/** Rows of like parts are shown by so many of them. */
const SHOWN: Partial<Record<SymbolId, number>> = { 'supply-header': 3, 'return-header': 3 }

/** One symbol by itself with the ends of its lines, at its size on the sheet unless that is too large for a key. */
export function SymbolSample({ symbol }: { symbol: SymbolId }) {
  const count = SHOWN[symbol] ?? 1
  const box = symbols[symbol].box(count)
  const ports = symbols[symbol].ports(count)
  const stubs = ['in', 'out'].flatMap((name) => {
    const port = ports[name]
    return port && !port.spread && port.at[1] === 0 ? [port.at[0]] : []
  })
  const left = Math.min(box.left, ...stubs.map((x) => x - STUB)) - MARGIN
  const width = Math.max(box.right, ...stubs.map((x) => x + STUB)) + MARGIN - left
  const height = box.bottom - box.top + 2 * MARGIN
  const scale = Math.min(1, WIDEST / width, TALLEST / height)
  return (
    <svg
      class="circuit-sample"
      viewBox={`${left} ${box.top - MARGIN} ${width} ${height}`}
      width={Math.round(width * scale)}
      height={Math.round(height * scale)}
      aria-hidden="true"
    >
      {stubs.map((x) => (
        <path key={x} class="circuit-line" d={`M${x} 0h${Math.sign(x) * STUB}`} />
      ))}
      <CircuitSymbol symbol={symbol} turn={0} count={count} />
    </svg>
  )
}
