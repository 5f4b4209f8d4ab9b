import type { KindId, UnitSystem } from '../../calculators/quantity/types.ts'
import { readFigure } from '../../calculators/quantity/figure.ts'
import {
  formatIn,
  formatNumber,
  formatWithUncertainty,
  NO_BREAK_SPACE,
} from '../../calculators/quantity/format.ts'
import { unitForSystem } from '../../calculators/quantity/kinds.ts'
import { fromSI } from '../../calculators/quantity/units.ts'

const systems: readonly UnitSystem[] = ['si', 'us', 'mixed']

/** A conversion shows no fewer digits than this, so that '10 kPa' does not turn into '1 psi'. */
const FEWEST_DIGITS = 3

export interface Wording {
  /** The unit systems that this wording serves, as the attribute data-figure lists them: 'si mixed'. */
  readonly systems: string
  readonly text: string
}

/** A figure of the data: '450 kPa'. One that cannot be read fails the build. */
export function readingOf(figure: string, kind: KindId): { si: number; unit: string } {
  const reading = readFigure(figure, kind)
  if (!reading.ok) throw new Error(`«${figure}»: ${reading.reason}; allowed: ${reading.accepted}`)
  return reading
}

/** The kind of a difference between two values of this kind. */
export function differenceKind(kind: KindId): KindId {
  if (kind === 'temperature') return 'temperatureDifference'
  if (kind === 'gaugePressure' || kind === 'absolutePressure') return 'pressureDifference'
  return kind
}

/**
 * How a figure reads in each unit system, systems that read alike taken together, SI first. Which one is seen is
 * settled by the style sheet, so that a change of units needs no computing in the browser. In its own unit a figure
 * keeps the digits with which it is written.
 * @param figure number and unit in one text: '340 kPa'
 * @param kind kind of quantity
 * @param tolerance half-width about the figure, also with its unit; left out where there is none
 */
export function wordingsOf(figure: string, kind: KindId, tolerance?: string): Wording[] {
  const { unit } = readingOf(figure, kind)
  const wordings = new Map<string, string>()
  for (const system of systems) {
    const shownIn = unitForSystem(kind, system, unit)
    const text =
      shownIn === unit ? asWritten(figure, kind, tolerance) : converted(figure, kind, shownIn, tolerance)
    const served = wordings.get(text)
    wordings.set(text, served ? `${served} ${system}` : system)
  }
  return [...wordings].map(([text, served]) => ({ systems: served, text }))
}

function asWritten(figure: string, kind: KindId, tolerance?: string): string {
  const { si, unit } = readingOf(figure, kind)
  const text = formatIn(si, kind, unit, { digits: digitsOf(figure) })
  if (tolerance === undefined) return text
  const spread = readingOf(tolerance, differenceKind(kind))
  const shownSpread = formatNumber(fromSI(spread.si, unit, differenceKind(kind)), digitsOf(tolerance))
  const [number = '', ...symbol] = text.split(NO_BREAK_SPACE)
  return [`${number} ± ${shownSpread}`, ...symbol].join(NO_BREAK_SPACE)
}

function converted(figure: string, kind: KindId, unit: string, tolerance?: string): string {
  const { si } = readingOf(figure, kind)
  if (tolerance === undefined)
    return formatIn(si, kind, unit, { digits: Math.max(FEWEST_DIGITS, digitsOf(figure)) })
  return formatWithUncertainty(si, readingOf(tolerance, differenceKind(kind)).si, kind, unit)
}

/** Significant digits with which a figure is written. */
function digitsOf(figure: string): number {
  const number = /[\d.]+/.exec(figure)?.[0] ?? ''
  return Math.max(1, number.replace('.', '').replace(/^0+/, '').length)
}
