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
  const instruments = useMemo(() => instrumentsOf(data), [data])
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
    const range = instruments.get(element.id)
    const reading = now.readings.find(({ part }) => part === element.id)
    const usual = health.readings.find(({ part }) => part === element.id)
    if (range === undefined || reading === undefined || usual === undefined) return null
    return <GaugeFace now={needleAngle(reading.value / range)} health={needleAngle(usual.value / range)} />
  }
  const note = (element: DrawnElement): string | undefined => {
    if (!running) return undefined
    const glass = now.glasses.find(({ part }) => part === element.id)
    if (glass !== undefined) return glass.look
    const reading = now.readings.find(({ part }) => part === element.id)
    if (reading === undefined || !instruments.has(element.id)) return undefined
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
  return <CircuitDrawing circuit={data.circuit} id={htmlId} linkOf={() => `#${htmlId}-facts`} live={live} />
}

/** The instruments, by id, with the largest reading of those that have a round face. [Pa] */
function instrumentsOf(data: BenchData): ReadonlyMap<string, number | undefined> {
  return new Map(
    data.circuit.elements
      .filter(({ model }) => /-gauge$|^thermometer$|^viscometer$/.test(model.kind))
      .map(({ id, model: { range } }) => [
        id,
        range === undefined ? undefined : figureIn(data, range, 'pressureDifference'),
      ]),
  )
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
