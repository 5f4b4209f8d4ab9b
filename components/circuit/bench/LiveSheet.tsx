import type { CircuitState } from '../../../calculators/circuit/types.ts'
import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import { CircuitDrawing, type LiveDrawing } from '../CircuitDrawing.tsx'
import type { DrawnElement } from '../types.ts'
import { GaugeFace } from './GaugeFace.tsx'
import { GlassFace, WINDOW } from './GlassFace.tsx'
import { fullFlowOf, lineLooks, partShades } from './looks.ts'
import type { Scale } from './scale.ts'
import { figureIn } from './setting.ts'
import type { BenchData } from './types.ts'
import { shownValue } from './words.ts'

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
    const range = rangeOf(data, element.id)
    const reading = now.readings.find(({ part }) => part === element.id)
    const usual = health.readings.find(({ part }) => part === element.id)
    if (range === undefined || reading === undefined || usual === undefined) return null
    return <GaugeFace now={reading.value / range} health={usual.value / range} />
  }
  const note = (element: DrawnElement): string | undefined => {
    if (!running) return undefined
    const glass = now.glasses.find(({ part }) => part === element.id)
    if (glass !== undefined) return glass.look
    const reading = now.readings.find(({ part }) => part === element.id)
    if (reading === undefined || !isInstrument(data, element.id)) return undefined
    const usual = health.readings.find(({ id }) => id === reading.id)
    return shownValue(reading.value, reading.kind, system, reading.accuracy) + trendOf(reading, usual)
  }
  const live: LiveDrawing = {
    lines: running ? lineLooks(now, scale, fullFlowOf(health)) : new Map(),
    shades: running ? partShades(now, scale) : new Map(),
    face,
    note,
    chosen,
    choose,
  }
  return (
    <CircuitDrawing
      circuit={data.circuit}
      id={htmlId}
      linkOf={(element) => `#${htmlId}-row-${element}`}
      live={live}
    />
  )
}

const modelOf = (data: BenchData, id: string) =>
  data.circuit.elements.find((element) => element.id === id)?.model

const isInstrument = (data: BenchData, id: string): boolean =>
  /-gauge$|^thermometer$|^viscometer$/.test(modelOf(data, id)?.kind ?? '')

/** Largest reading of a gauge; nothing for what has no round face. */
function rangeOf(data: BenchData, id: string): number | undefined {
  const range = modelOf(data, id)?.['range']
  if (range === undefined) return undefined
  return figureIn(data, range, 'pressureDifference')
}

/** An arrow where the instrument tells a change: no colour is needed to see it. */
function trendOf(
  now: { value: number; accuracy: number },
  usual: { value: number } | undefined,
): '' | ' ▲' | ' ▼' {
  const difference = now.value - (usual?.value ?? now.value)
  if (Math.abs(difference) < now.accuracy) return ''
  return difference > 0 ? ' ▲' : ' ▼'
}
