import type { Calculator } from '../../calculators/calculator/types.ts'
import { formatIn } from '../../calculators/quantity/format.ts'
import { Axes, LimitNames, Limits, nameOf } from './Chart.tsx'
import type { Words } from './Chart.tsx'
import { plot, size } from './chart-geometry.ts'
import type { Evaluation } from './evaluate.ts'
import { MathText } from './MathText.tsx'
import { pointsOf } from './points-geometry.ts'
import type { PointsGeometry } from './points-geometry.ts'
import type { FormState } from './state.ts'

interface Props {
  calculator: Calculator
  state: FormState
  evaluation: Evaluation
}

/** What was read, point by point, with the line through it, the edges of its band and the limits. */
export function PointsChart({ calculator, state, evaluation }: Props) {
  const chart = pointsOf(calculator, state, evaluation)
  if (chart === undefined) return null
  const words: Words = {
    x: (si) => formatIn(si, chart.x.kind, chart.x.unitId),
    y: (si) => formatIn(si, chart.y.kind, chart.y.unitId),
  }
  return (
    <>
      <figure class="chart">
        <p class="chart-axis-name">
          <MathText text={nameOf(chart.y)} />
        </p>
        <svg viewBox={`0 0 ${size.width} ${size.height}`} role="img" aria-label={inWords(chart, words)}>
          <Axes chart={chart} />
          <Limits limits={chart.limits} />
          <svg
            x={plot.left}
            y={plot.top}
            width={plot.right - plot.left}
            height={plot.bottom - plot.top}
            viewBox={`${plot.left} ${plot.top} ${plot.right - plot.left} ${plot.bottom - plot.top}`}
          >
            {chart.lines.map((one) => (
              <path
                key={one.label}
                class={one.edge ? 'chart-curve chart-edge' : 'chart-curve'}
                d={one.path}
              />
            ))}
          </svg>
          {chart.points.map((point) => (
            <PointSign key={point.label} point={point} />
          ))}
          <LimitNames limits={chart.limits} />
        </svg>
        <p class="chart-axis-name chart-axis-name-x">
          <MathText text={nameOf(chart.x)} />
        </p>
        <figcaption>
          <PointsKey chart={chart} words={words} />
        </figcaption>
      </figure>
      <PointsTable chart={chart} words={words} />
    </>
  )
}

/** A point that stands out has another shape, since colour alone is not seen by everybody. */
function PointSign({ point }: { point: { at: readonly [number, number]; standsOut: boolean } }) {
  const [across, down] = point.at
  return point.standsOut ? (
    <path class="chart-mark" d={`M${across - 5} ${down - 5}h10v10h-10z`} />
  ) : (
    <circle class="chart-reading" cx={across} cy={down} r="3.5" />
  )
}

function inWords(chart: PointsGeometry, words: Words): string {
  const out = chart.points.filter((point) => point.standsOut).map((point) => point.label)
  const lowest = Math.min(...chart.points.map((point) => point.y))
  const highest = Math.max(...chart.points.map((point) => point.y))
  const marked = out.length > 0 ? ` Marked: ${out.join(', ')}.` : ''
  return `${chart.y.label} against ${chart.x.label}: ${chart.points.length} readings from ${words.y(lowest)} to ${words.y(highest)}.${marked}`
}

function PointsKey({ chart, words }: { chart: PointsGeometry; words: Words }) {
  return (
    <ul class="chart-key">
      <li>
        <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
          <circle class="chart-reading" cx="8" cy="8" r="3.5" />
        </svg>
        <span>Readings</span>
      </li>
      {chart.points
        .filter((point) => point.standsOut)
        .map((point) => (
          <li key={point.label}>
            <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
              <path class="chart-mark" d="M3 3h10v10H3z" />
            </svg>
            <span>{`${point.label}: ${words.y(point.y)}`}</span>
          </li>
        ))}
      {chart.lines.map((one) => (
        <li key={one.label}>
          <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
            <path class={one.edge ? 'chart-curve chart-edge' : 'chart-curve'} d="M0 8h16" />
          </svg>
          <span>{one.label}</span>
        </li>
      ))}
      {chart.limits.map((limit) => (
        <li key={limit.label}>
          <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
            <path class="chart-limit-sign" d="M0 8h16" />
          </svg>
          <span>{`${limit.label}: ${words.y(limit.y)}`}</span>
        </li>
      ))}
    </ul>
  )
}

/** The same in figures. */
function PointsTable({ chart, words }: { chart: PointsGeometry; words: Words }) {
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
          {chart.points.map((point) => (
            <tr key={point.label}>
              <td>{words.x(point.x)}</td>
              <td>{words.y(point.y)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  )
}
