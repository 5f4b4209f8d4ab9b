import type { ChartGeometry } from './chart-geometry.ts'
import type { Words } from './Chart.tsx'

/** Rows enough to read the curve off, few enough to read at all. */
const ROWS = 9

/** The same as the curve in figures. */
export function ChartTable({ chart, words }: { chart: ChartGeometry; words: Words }) {
  const step = Math.max(1, Math.floor((chart.curve.length - 1) / (ROWS - 1)))
  const rows = chart.curve.filter((_, place) => place % step === 0)
  return (
    <details class="chart-table">
      <summary>The chart as a table</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">{chart.x.label}</th>
            <th scope="col">{chart.y.label}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.x}>
              <td>{words.x(row.x)}</td>
              <td>{words.y(row.y)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  )
}
