import type { Calculator } from '../../calculators/calculator/types.ts'
import { rowInWords } from '../../calculators/calculator/check-values.ts'
import { unitOf } from '../../calculators/quantity/units.ts'
import type { Evaluation } from './evaluate.ts'
import { MathText } from './MathText.tsx'
import type { FieldSpecs } from './fields.ts'
import { shownText } from './state.ts'
import type { FormState } from './state.ts'
import { summaryOf } from './summary.ts'
import { rowsThatCount } from './table-state.ts'
import type { TableState } from './table-state.ts'

interface Props {
  calculator: Calculator
  specs: FieldSpecs
  state: FormState
  evaluation: Evaluation
}

/** On paper the inputs stand as values with their accuracy; on the screen this is hidden. */
export function PrintedInputs({ calculator, specs, state, evaluation }: Props) {
  const { inputs } = summaryOf(calculator, specs, state, evaluation, [], '')
  const tables = evaluation.relevant.flatMap((id) => state.tables[id] ?? [])
  return (
    <>
      <table class="printed-inputs">
        <caption>Inputs</caption>
        <tbody>
          {inputs
            .filter((line) => line.table === undefined)
            .map((line) => (
              <tr key={line.id}>
                <th scope="row">
                  {line.name} <MathText text={line.symbol} />
                </th>
                <td>{line.text}</td>
              </tr>
            ))}
        </tbody>
      </table>
      {tables.map((table) => (
        <PrintedTable key={table.spec.id} table={table} />
      ))}
    </>
  )
}

function PrintedTable({ table }: { table: TableState }) {
  const columns = Object.entries(table.spec.columns)
  const unit = (id: string): string => unitOf(table.units[id]?.unit ?? '1').symbol
  return (
    <table class="printed-inputs">
      <caption>{table.spec.label}</caption>
      <thead>
        <tr>
          <th scope="col">{table.spec.rowName}</th>
          {columns.map(([id, column]) => (
            <th scope="col" key={id}>
              {column.label} <MathText text={column.symbol} />
              {unit(id) !== '' && `, ${unit(id)}`}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rowsThatCount(table).map((row, place) => (
          <tr key={rowInWords(table.spec, place)}>
            <th scope="row">{place + 1}</th>
            {columns.map(([id, column]) => {
              const field = row[id]
              return <td key={id}>{field === undefined ? '' : shownText(field, column)}</td>
            })}
          </tr>
        ))}
      </tbody>
    </table>
  )
}
