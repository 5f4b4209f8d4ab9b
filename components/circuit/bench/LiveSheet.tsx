import { useMemo } from 'preact/hooks'
import type { CircuitState } from '../../../calculators/circuit/types.ts'
import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import { CircuitDrawing, type LiveDrawing } from '../CircuitDrawing.tsx'
import type { DrawnElement } from '../types.ts'
import { GaugeFace, needleAngle } from './GaugeFace.tsx'
import { GlassFace, WINDOW } from './GlassFace.tsx'
import { fullFlowOf, lineLooks, partShades } from './looks.ts'
import type { Scale } from './scale.ts'
import { figureIn } from './setting.ts'
import { sheetNotes } from './sheet-notes.ts'
import type { BenchData } from './types.ts'

interface Props {
  data: BenchData
  htmlId: string
  /** Both absent while the model has no answer: then the circuit is drawn as built. */
  now: CircuitState | undefined
  health: CircuitState | undefined
  scale: Scale | undefined
  system: UnitSystem
  chosen: string | undefined
  choose: (part: string) => void
}

/** Radius of a sight glass on the sheet. */
const GLASS_RADIUS = 20

/** The circuit's drawing as it runs: lines by their pressure or temperature, flow, glasses and gauges. */
export function LiveSheet({ data, htmlId, now, health, scale, system, chosen, choose }: Props) {
  const ranges = useMemo(() => rangesOf(data), [data])
  const running = now !== undefined && health !== undefined && scale !== undefined
  const face = (element: DrawnElement) => {
    if (!running) return null
    const glass = now.glasses.find(({ part }) => part === element.id)
    if (glass !== undefined)
      return (
        <g transform={`scale(${GLASS_RADIUS / WINDOW})`}>
          <GlassFace view={glass} id={`${htmlId}-${element.id}`} />
        </g>
      )
    const range = ranges.get(element.id)
    const reading = now.readings.find(({ part }) => part === element.id)
    const usual = health.readings.find(({ part }) => part === element.id)
    if (range === undefined || reading === undefined || usual === undefined) return null
    return <GaugeFace now={needleAngle(reading.value / range)} health={needleAngle(usual.value / range)} />
  }
  const notes = running ? sheetNotes(data, now, health, system) : undefined
  const live: LiveDrawing = {
    lines: running ? lineLooks(now, scale, fullFlowOf(health)) : new Map(),
    shades: running ? partShades(now, scale) : new Map(),
    face,
    note: ({ id }) => notes?.get(id),
    chosen,
    choose,
  }
  return <CircuitDrawing circuit={data.circuit} id={htmlId} linkOf={() => `#${htmlId}-facts`} live={live} />
}

/** The largest readings of the gauges that have a round face, by id. [Pa] */
const rangesOf = (data: BenchData): ReadonlyMap<string, number> =>
  new Map(
    data.circuit.elements.flatMap(({ id, model: { range } }) =>
      range === undefined ? [] : [[id, figureIn(data, range, 'pressureDifference')] as const],
    ),
  )
