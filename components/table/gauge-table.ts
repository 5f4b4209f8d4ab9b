import type { PartKindId } from '../../calculators/circuit/part-kinds.ts'
import { readFigure } from '../../calculators/quantity/figure.ts'
import { formatNumber, withoutFinalZeros } from '../../calculators/quantity/format.ts'
import type { KindId } from '../../calculators/quantity/types.ts'
import type { Cell, ReferenceTable, Row } from './types.ts'

/** A circuit with its gauges, as its file gives it. */
export interface TabledCircuit {
  readonly title: string
  readonly plant: string
  readonly elements: readonly {
    readonly label: string
    readonly model: { readonly kind: PartKindId; readonly [parameter: string]: string | undefined }
  }[]
  /** Set points of its plant, which its figures may name. */
  readonly setPoints: Readonly<Record<string, { readonly value: string }>>
}

/** Kind of what a gauge's range and its accuracy are in; a viscometer's accuracy is a share of its reading. */
const gauges: Partial<Record<PartKindId, { readonly range?: KindId; readonly accuracy: KindId }>> = {
  'vacuum-gauge': { range: 'pressureDifference', accuracy: 'pressureDifference' },
  'drop-gauge': { range: 'pressureDifference', accuracy: 'pressureDifference' },
  'pressure-gauge': { range: 'pressureDifference', accuracy: 'pressureDifference' },
  thermometer: { accuracy: 'temperatureDifference' },
  viscometer: { accuracy: 'ratio' },
}

function rowsOf({ title, plant, elements, setPoints }: TabledCircuit): Row[] {
  return elements.flatMap(({ label, model }): Row[] => {
    const gauge = gauges[model.kind]
    if (!gauge) return []
    const written = (parameter: string): string => {
      const text = model[parameter] ?? ''
      return setPoints[text]?.value ?? text
    }
    const cell = (text: string, kind: KindId | undefined): Cell =>
      kind === undefined || text === '' ? '' : { figure: text, kind }
    return [
      {
        name: label,
        group: title,
        cells: [
          cell(written('range'), gauge.range),
          cell(written('accuracy'), gauge.accuracy),
          shareOf(written('range'), written('accuracy'), gauge.range),
        ],
        origin: { plant },
      },
    ]
  })
}

/** Accuracy as a share of the range, as gauge makers state it. */
function shareOf(range: string, accuracy: string, kind: KindId | undefined): Cell {
  if (kind === undefined) return ''
  const [whole, part] = [readFigure(range, kind), readFigure(accuracy, kind)]
  if (!whole.ok || !part.ok) return ''
  return { figure: `${withoutFinalZeros(formatNumber((100 * part.si) / whole.si, 2))} %`, kind: 'ratio' }
}

/** The gauges of every circuit with what they show and how well. */
export function gaugesTable(circuits: readonly TabledCircuit[]): ReferenceTable {
  return {
    id: 'gauges',
    title: 'Gauges of the plants',
    caption: 'Full scale and accuracy of the gauges of the plants of this handbook.',
    invented: true,
    head: 'Gauge',
    columns: ['Full scale', 'Accuracy, ±', 'Share of full scale'],
    rows: circuits.flatMap(rowsOf),
    notes: ['A thermometer and a viscometer have no full scale that counts here.'],
  }
}
