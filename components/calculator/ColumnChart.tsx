import { useState } from 'preact/hooks'
import type { Calculator } from '../../calculators/calculator/types.ts'
import { Axes, nameOf } from './Chart.tsx'
import { size } from './chart-geometry.ts'
import type { ColumnRow } from './column-data.ts'
import { columnChart } from './column-geometry.ts'
import type { FieldSpec } from './fields.ts'
import { MathText } from './MathText.tsx'
import { outputUnit } from './outputs.ts'
import type { FormState } from './state.ts'

interface Props {
  calculator: Calculator
  spec: FieldSpec
  unit: string
  state: FormState
  rows: readonly ColumnRow[]
  htmlId: string
}

/** One result against the column, point by point. */
export function ColumnChart({ calculator, spec, unit, state, rows, htmlId }: Props) {
  const outputs = Object.entries(calculator.outputs).flatMap(([id, output]) =>
    output.type === 'quantity' ? [{ id, output }] : [],
  )
  const [wanted, want] = useState<string | undefined>(calculator.chart?.y)
  const shown = outputs.find(({ id }) => id === wanted) ?? outputs[0]
  if (shown === undefined || rows.length < 2) return null
  const chart = columnChart({
    rows,
    input: spec,
    inputUnit: unit,
    outputId: shown.id,
    output: shown.output,
    outputUnit: outputUnit(shown.id, shown.output, state),
    log: calculator.chart?.y === shown.id && calculator.chart.yScale === 'log',
  })
  return (
    <>
      {outputs.length > 1 && (
        <div class="column-choice">
          <label for={`${htmlId}-chart`}>{'Result in the chart'}</label>
          <select
            id={`${htmlId}-chart`}
            value={shown.id}
            autocomplete="off"
            onChange={(event) => want(event.currentTarget.value)}
          >
            {outputs.map(({ id, output }) => (
              <option key={id} value={id} selected={id === shown.id}>
                {output.label}
              </option>
            ))}
          </select>
        </div>
      )}
      {chart === undefined ? (
        <p class="column-help">All values are the same, so there is no chart.</p>
      ) : (
        <figure class="chart">
          <p class="chart-axis-name">
            <MathText text={nameOf(chart.y)} />
          </p>
          <svg
            viewBox={`0 0 ${size.width} ${size.height}`}
            role="img"
            aria-label={`${chart.y.label} against ${chart.x.label}, ${rows.length} points; the table above has their values.`}
          >
            <Axes chart={chart} />
            <path class="chart-curve" d={chart.path} />
            {chart.points.map((point) => (
              <circle key={point.line} class="chart-working" cx={point.at[0]} cy={point.at[1]} r="3.2" />
            ))}
          </svg>
          <p class="chart-axis-name chart-axis-name-x">
            <MathText text={nameOf(chart.x)} />
          </p>
        </figure>
      )}
    </>
  )
}
