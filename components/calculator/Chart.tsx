import { useMemo } from 'preact/hooks'
import type { Calculator } from '../../calculators/calculator/types.ts'
import { formatIn } from '../../calculators/quantity/format.ts'
import { chartOf, plot, size } from './chart-geometry.ts'
import type { ChartGeometry, Point } from './chart-geometry.ts'
import { ChartTable } from './ChartTable.tsx'
import type { Evaluation } from './evaluate.ts'
import { MathText } from './MathText.tsx'
import type { FormState } from './state.ts'

interface Props {
  calculator: Calculator
  state: FormState
  evaluation: Evaluation
}

export interface Words {
  readonly x: (si: number) => string
  /** With the digits that its uncertainty leaves. */
  readonly y: (si: number, uncertainty?: number) => string
}

/** The result along one input, with the place where this calculation stands. */
export function Chart({ calculator, state, evaluation }: Props) {
  // The form renders again for its timers too: the curve is sampled only for a new result or unit.
  const chart = useMemo(() => chartOf(calculator, state, evaluation), [calculator, state, evaluation])
  if (chart === undefined) return null
  const words: Words = {
    x: (si) => formatIn(si, chart.x.kind, chart.x.unitId),
    y: (si, uncertainty) =>
      formatIn(si, chart.y.kind, chart.y.unitId, uncertainty === undefined ? {} : { uncertainty }),
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
          <path class="chart-curve" d={chart.path} />
          {chart.marks.map((mark) => (
            <path key={mark.label} class="chart-mark" d={`M${mark.at[0] - 5} ${mark.at[1] - 5}h10v10h-10z`} />
          ))}
          {chart.working && (
            <circle class="chart-working" cx={chart.working.at[0]} cy={chart.working.at[1]} r="6" />
          )}
          <LimitNames limits={chart.limits} />
        </svg>
        <p class="chart-axis-name chart-axis-name-x">
          <MathText text={nameOf(chart.x)} />
        </p>
        <figcaption>
          <Key chart={chart} words={words} />
        </figcaption>
      </figure>
      <ChartTable chart={chart} words={words} />
    </>
  )
}

export const nameOf = (axis: ChartGeometry['x']): string =>
  axis.unit === '' ? axis.label : `${axis.label}, ${axis.unit}`

function inWords(chart: ChartGeometry, words: Words): string {
  const first = chart.curve[0]
  const last = chart.curve.at(-1)
  if (first === undefined || last === undefined) return ''
  const here = chart.working
    ? ` This calculation stands at ${words.x(chart.working.x)}, ${words.y(chart.working.y, chart.working.uncertainty)}.`
    : ''
  return `${chart.y.label} against ${chart.x.label}: from ${words.y(first.y)} at ${words.x(first.x)} to ${words.y(last.y)} at ${words.x(last.x)}.${here}`
}

/** The lines of limits, below the curve. */
export function Limits({ limits }: Pick<ChartGeometry, 'limits'>) {
  return (
    <g class="chart-limit">
      {limits.map((limit) => (
        <line key={limit.label} x1={plot.left} x2={plot.right} y1={limit.at} y2={limit.at} />
      ))}
    </g>
  )
}

/** Their names, above everything else that is drawn, so that no curve runs through the letters. */
export function LimitNames({ limits }: Pick<ChartGeometry, 'limits'>) {
  return (
    <g class="chart-limit">
      {limits.map((limit) => (
        <text key={limit.label} x={plot.right - 4} y={limit.at - 5} text-anchor="end">
          {limit.label}
        </text>
      ))}
    </g>
  )
}

export function Axes({ chart }: { chart: Pick<ChartGeometry, 'x' | 'y'> }) {
  return (
    <g class="chart-axes">
      {chart.x.ticks.map((tick) => (
        <g key={tick.text}>
          <line class="chart-grid" x1={tick.at} x2={tick.at} y1={plot.top} y2={plot.bottom} />
          <text x={tick.at} y={plot.bottom + 17} text-anchor="middle">
            {tick.text}
          </text>
        </g>
      ))}
      {chart.y.ticks.map((tick) => (
        <g key={tick.text}>
          <line class="chart-grid" x1={plot.left} x2={plot.right} y1={tick.at} y2={tick.at} />
          <text x={plot.left - 6} y={tick.at + 4} text-anchor="end">
            {tick.text}
          </text>
        </g>
      ))}
      <path class="chart-frame" d={`M${plot.left} ${plot.top}V${plot.bottom}H${plot.right}`} />
    </g>
  )
}

/** What each sign of the chart stands for, with its values. */
function Key({ chart, words }: { chart: ChartGeometry; words: Words }) {
  const entry = (point: Point, uncertainty?: number): string =>
    `${point.label}: ${words.x(point.x)}, ${words.y(point.y, uncertainty)}`
  return (
    <ul class="chart-key">
      {chart.working && (
        <li>
          <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
            <circle class="chart-working" cx="8" cy="8" r="5.5" />
          </svg>
          <span>{entry(chart.working, chart.working.uncertainty)}</span>
        </li>
      )}
      {chart.marks.map((mark) => (
        <li key={mark.label}>
          <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
            <path class="chart-mark" d="M3 3h10v10H3z" />
          </svg>
          <span>{entry(mark)}</span>
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
