import { GRAVITY } from '../hydraulics/hydrostatics.ts'
import { LEAST_SHARE, told } from './at-rest.ts'
import { gasRatio, type Fields } from './fields.ts'
import type { Situation } from './situation.ts'
import type { GlassLook, GlassView } from './types.ts'

/** Froude number of the liquid from which on a glass runs full, and below which it looks empty. Common practice. */
const RUNS_FULL = 0.6
const EMPTY_BELOW = 0.03

/** A glass is so many bores high. */
const HEIGHT = 3

/** Share of gas that an eye sees as bubbles. Common practice. */
const SEEN = 0.003

/** Free water from which on fuel looks milky, share by volume. Common practice. */
const MILKY_FROM = 1e-3

const PART_FULL_FROM = 0.05
const FULL_FROM = 0.95

/**
 * How the glasses look.
 * @param situation of the state
 * @param fields at rest
 * @returns each glass with fill, gas and where its fuel comes from
 * @source common practice (Froude number of a line that runs full; shares that an eye sees)
 */
export function glassViews(situation: Situation, fields: Fields): GlassView[] {
  const { model, parameters, topology } = situation
  return model.parts.flatMap(({ kind, id }, place): GlassView[] => {
    const ends = model.ends[place]
    const values = parameters.values[place]
    if (kind !== 'glass' || !ends || !values) return []
    const flow = ends.links.reduce((sum, link) => sum + (fields.flow[link] ?? 0), 0)
    // Glasses that the way of the fuel through the injectors does not lead through are empty in health.
    const main = topology.behindInjectors[ends.in] === true
    return [viewOf(situation, fields, id, ends, values, flow, main)]
  })
}

function viewOf(
  situation: Situation,
  fields: Fields,
  part: string,
  ends: { readonly in: number; readonly out: number },
  values: { readonly bore: number; readonly dirt: number },
  flow: number,
  main: boolean,
): GlassView {
  const { fluid, conditions } = situation
  const { bore } = values
  const pressure = ((fields.pressure[ends.in] ?? 0) + (fields.pressure[ends.out] ?? 0)) / 2
  const node = flow >= 0 ? ends.in : ends.out
  const ratio = gasRatio(situation, fields, node, pressure)
  const velocity = Math.abs(flow) / ((Math.PI / 4) * bore * bore)
  const froude = velocity / Math.sqrt(GRAVITY * bore)
  const running = Math.min(1, Math.max(0, (froude - EMPTY_BELOW) / (RUNS_FULL - EMPTY_BELOW)))
  const density = fluid.density(fields.temperature[node] ?? conditions.ambientTemperature)
  // How high fuel at rest would stand in it, against the air.
  const column = (pressure - conditions.airPressure) / (density * GRAVITY)
  // A branch that holds gas holds nothing up.
  const standing = Math.min(1, Math.max(0, 0.5 + column / (HEIGHT * bore))) / (1 + ratio)
  const fill = Math.max(running, standing)
  // Gas in a trickle that runs down the wall is not seen; a glass that stands still has let its gas rise.
  const gas = running > 0 || main ? told(ratio / (1 + ratio), LEAST_SHARE) : 0
  const look = lookOf(fill, gas)
  const from = look === 'empty' ? 'none' : main ? 'through' : running > PART_FULL_FROM ? 'valve' : 'drain'
  const milky = fluid.water > MILKY_FROM
  return {
    part,
    look,
    words: wordsOf(look, from, gas, standing, values.dirt, milky),
    fill,
    gas,
    from,
    dirt: values.dirt,
    milky,
  }
}

function lookOf(fill: number, gas: number): GlassLook {
  if (fill < PART_FULL_FROM) return 'empty'
  if (fill < FULL_FROM) return 'part full'
  return gas > SEEN ? 'full with bubbles' : 'full and clear'
}

function wordsOf(
  look: GlassLook,
  from: GlassView['from'],
  gas: number,
  standing: number,
  dirt: number,
  milky: boolean,
): string {
  // What is milky is not clear.
  const plain = from !== 'through' || (milky && look === 'full and clear')
  const start = look.startsWith('full') && plain ? 'full' : look
  const words: string[] = [start]
  if (from === 'drain') words.push('rising from its drain')
  if (from === 'valve')
    words.push(
      standing >= FULL_FROM ? 'running from above into a drain that is held up' : 'running from above',
    )
  if (gas > SEEN && look !== 'empty' && start !== 'full with bubbles') words.push('with bubbles')
  if (milky && look !== 'empty') words.push('milky')
  if (dirt > 0.8) words.push('hardly to be seen for dirt')
  else if (dirt > 0.2) words.push('dirty')
  return words.join(', ')
}
