import { checkValveLaw } from '../../../calculators/hydraulics/elements/check-valve.ts'
import type { Liquid } from '../../../calculators/hydraulics/elements/liquid.ts'
import { pipeLaw } from '../../../calculators/hydraulics/elements/pipe.ts'
import { GRAVITY } from '../../../calculators/hydraulics/hydrostatics.ts'
import type { Law, Link, Net } from '../../../calculators/hydraulics/network/index.ts'
import type { Pipe } from '../../../calculators/hydraulics/pipe.ts'

/** A network as both programs get it. All in SI, pressures static. */
export interface Case {
  readonly name: string
  readonly fuel: Liquid
  readonly points: readonly Point[]
  readonly parts: readonly Part[]
}

export interface Point {
  readonly id: string
  /** Above the datum. [m] Default 0. */
  readonly height?: number
  /** Fixed: a tank or a supply. [Pa] */
  readonly pressure?: number
  /** [m³/s] */
  readonly outflow?: number
}

interface Ends {
  readonly id: string
  readonly from: string
  readonly to: string
}

export type Part = Ends &
  (
    | { readonly kind: 'pipe'; readonly pipe: Pipe }
    /** A pipe that lets nothing back. */
    | { readonly kind: 'check'; readonly pipe: Pipe }
    /** A law of ours, given to EPANET as a curve: straight lines between these flows [m³/s]. */
    | {
        readonly kind: 'pump' | 'curve'
        readonly law: Law
        readonly flows: readonly number[]
        /** Flow that our solver begins with; EPANET has its own. [m³/s] */
        readonly first?: number
      }
    /** Ours a spring valve without override; EPANET's holds the pressure before it. [Pa] */
    | { readonly kind: 'sustaining'; readonly pressure: number; readonly law: Law; readonly bore: number }
  )

export function lossAt(law: Law, flow: number): { drop: number; slope: number } {
  const into = { drop: Number.NaN, slope: Number.NaN }
  law(flow, into)
  return into
}

/** Shut, it passes a thousandth of a drop in a minute at a bar; open, it costs next to nothing. */
const CHECK = checkValveLaw({ cracking: 0, linear: 1e4, quadratic: 0, leakage: 1e-17 })

/** The same network for our solver. A check pipe becomes a check valve and a pipe behind it. */
export function netOf({ fuel, points, parts }: Case): Net {
  const nodes = points.map(({ id, pressure, outflow }) => ({
    id,
    ...(pressure === undefined ? {} : { pressure }),
    ...(outflow === undefined ? {} : { outflow }),
  }))
  const place = new Map(points.map(({ id }, i) => [id, i]))
  const heights = new Map(points.map(({ id, height = 0 }) => [id, height]))
  const links: Link[] = []
  for (const part of parts) {
    const [from, to] = [place.get(part.from) ?? -1, place.get(part.to) ?? -1]
    const rise = (heights.get(part.to) ?? 0) - (heights.get(part.from) ?? 0)
    if (part.kind === 'check') {
      nodes.push({ id: `${part.id}-behind` })
      links.push({ id: `${part.id}-seat`, from, to: nodes.length - 1, law: CHECK })
      links.push({ id: part.id, from: nodes.length - 1, to, law: pipeLaw({ ...part.pipe, rise }, fuel) })
    } else if (part.kind === 'pipe')
      links.push({ id: part.id, from, to, law: pipeLaw({ ...part.pipe, rise }, fuel), first: firstFlow(part.pipe) })
    else {
      if (rise !== 0) throw new Error(`${part.id}: only pipes rise`)
      links.push({ id: part.id, from, to, law: part.law, first: firstOf(part) })
    }
  }
  return { nodes, links }
}

/** What EPANET begins with too: a foot a second; in a pump the middle of its curve. [m³/s] */
const firstFlow = (pipe: Pick<Pipe, 'bore'>) => 0.3048 * (Math.PI / 4) * pipe.bore ** 2
function firstOf(part: Part): number {
  if (part.kind === 'curve' && part.first !== undefined) return part.first
  if (part.kind === 'pump') return part.flows[Math.floor(part.flows.length / 2)] ?? 0
  return firstFlow({ bore: VALVE_BORE })
}

/** A curve needs no bore, but EPANET wants one. [m] */
const VALVE_BORE = 0.02

/** EPANET works with 32.2 ft/s². [m/s²] */
export const EPANET_GRAVITY = 32.2 * 0.3048

/**
 * EPANET's text for a network: heads in metres of the fuel. Heights are scaled by the ratio of the two gravities, so
 * that a metre of lift is the same pressure in both.
 */
export function epanetText({ fuel, points, parts }: Case, accuracy: number): string {
  const head = (pressure: number) => pressure / (fuel.density * EPANET_GRAVITY)
  const scaled = (height: number) => (height * GRAVITY) / EPANET_GRAVITY
  const litres = (flow: number) => flow * 1000
  const millimetres = (size: number) => size * 1000
  const junctions: string[] = []
  const reservoirs: string[] = []
  const pipes: string[] = []
  const pumps: string[] = []
  const valves: string[] = []
  const curves: string[] = []
  for (const { id, height = 0, pressure, outflow = 0 } of points)
    if (pressure === undefined) junctions.push(`${id} ${scaled(height)} ${litres(outflow)}`)
    else reservoirs.push(`${id} ${scaled(height) + head(pressure)}`)
  for (const part of parts) {
    const ends = `${part.id} ${part.from} ${part.to}`
    if (part.kind === 'pipe' || part.kind === 'check') {
      const { length, bore, roughness, minorLosses } = part.pipe
      const status = part.kind === 'check' ? 'CV' : 'Open'
      pipes.push(`${ends} ${length} ${millimetres(bore)} ${millimetres(roughness)} ${minorLosses} ${status}`)
    } else if (part.kind === 'sustaining')
      valves.push(`${ends} ${millimetres(part.bore)} PSV ${head(part.pressure)} 0`)
    else {
      const sign = part.kind === 'pump' ? -1 : 1
      for (const flow of part.flows)
        curves.push(`c-${part.id} ${litres(flow)} ${sign * head(lossAt(part.law, flow).drop)}`)
      if (part.kind === 'pump') pumps.push(`${ends} HEAD c-${part.id}`)
      else valves.push(`${ends} ${millimetres(VALVE_BORE)} GPV c-${part.id} 0`)
    }
  }
  return [
    '[JUNCTIONS]',
    ...junctions,
    '[RESERVOIRS]',
    ...reservoirs,
    '[PIPES]',
    ...pipes,
    '[PUMPS]',
    ...pumps,
    '[VALVES]',
    ...valves,
    '[CURVES]',
    ...curves,
    '[OPTIONS]',
    'UNITS LPS',
    'HEADLOSS D-W',
    // Below a thousandth it is read as m²/s.
    `VISCOSITY ${fuel.kinematicViscosity}`,
    `ACCURACY ${accuracy}`,
    'TRIALS 400',
    '[TIMES]',
    'DURATION 0',
    '[REPORT]',
    'STATUS NO',
    'MESSAGES NO',
    '[END]',
  ].join('\n')
}
