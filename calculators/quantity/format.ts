import { unitForSystem } from './kinds.ts'
import type { KindId, UnitSystem } from './types.ts'
import { fromSI, unitOf } from './units.ts'

/** Digits shown where nothing says how well a value is known. */
const USUAL_DIGITS = 4
/** A double carries not quite 16; more than 12 would show rounding errors of the conversion. */
const MOST_DIGITS = 12
/** Between these, numbers are written out; outside, with a power of ten. */
const SMALLEST_WRITTEN_OUT = 1e-4
const LARGEST_WRITTEN_OUT = 1e9

export const NO_BREAK_SPACE = '\u00a0'
const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹'

function magnitude(value: number): number {
  return Number(value.toExponential().split('e')[1])
}

function clampDigits(digits: number): number {
  return Number.isFinite(digits) ? Math.min(MOST_DIGITS, Math.max(1, Math.round(digits))) : USUAL_DIGITS
}

function powerOfTen(exponent: number): string {
  const digits = [...String(Math.abs(exponent))].map((digit) => SUPERSCRIPTS[Number(digit)]).join('')
  return `×10${exponent < 0 ? '⁻' : ''}${digits}`
}

/**
 * The number with so many significant digits, final zeros kept: '310.3', '0.00250', '6.309×10⁻⁵'. Never '-0'.
 * What is not finite comes out as '–'. Everything else is read again by `readPlain`.
 * @param value number to be shown [-]
 * @param significantDigits how many digits [-], 1 to 12
 */
export function formatNumber(value: number, significantDigits: number): string {
  if (!Number.isFinite(value)) return '–'
  if (value === 0) return '0'
  const digits = clampDigits(significantDigits)
  const rounded = Number(value.toPrecision(digits))
  const size = Math.abs(rounded)
  const sign = rounded < 0 ? '−' : ''
  if (!Number.isFinite(size)) return formatNumber(value, MOST_DIGITS)
  if (size < SMALLEST_WRITTEN_OUT || size >= LARGEST_WRITTEN_OUT) {
    const [mantissa = '', exponent = '0'] = size.toExponential(digits - 1).split('e')
    return `${sign}${mantissa}${powerOfTen(Number(exponent))}`
  }
  return `${sign}${size.toFixed(Math.max(0, digits - 1 - magnitude(size)))}`
}

/** The same number without the zeros behind its last digit: '340', not '340.0'. */
export function withoutFinalZeros(shown: string): string {
  return shown.replace(/\.(\d*?)0+(?=×|$)/, (_, kept: string) => (kept ? `.${kept}` : ''))
}

/** Digits of an uncertainty: two where the first is a 1 or a 2, otherwise one. */
function uncertaintyDigits(uncertainty: number): number {
  return Number(uncertainty.toExponential()[0]) <= 2 ? 2 : 1
}

/**
 * Significant digits with which a value is shown so that its last digit is the last one of its uncertainty. [-]
 * @param value value [any unit]
 * @param uncertainty half-width of its interval [same unit]; none, zero or not finite gives the usual four
 */
export function significantFor(value: number, uncertainty?: number): number {
  if (uncertainty === undefined || !Number.isFinite(uncertainty) || uncertainty <= 0) return USUAL_DIGITS
  if (!Number.isFinite(value) || value === 0) return 1
  return clampDigits(magnitude(value) - magnitude(uncertainty) + uncertaintyDigits(uncertainty))
}

/** Numbers and symbols are kept on one line; a percent sign and no unit at all need care of their own. */
function withUnit(shown: string, unitId: string): string {
  const { symbol } = unitOf(unitId)
  return symbol ? `${shown}${NO_BREAK_SPACE}${symbol}` : shown
}

export interface FormatOptions {
  /** Exactly so many significant digits. */
  readonly digits?: number
  /** SI; the digits follow from it. The uncertainty itself is not shown: see `formatWithUncertainty`. */
  readonly uncertainty?: number
}

/**
 * A quantity in words for a page: '310.3 kPa'. Without options four significant digits, final zeros dropped.
 * @param si value [SI unit of the kind]
 * @param kind kind of quantity [-]
 * @param unitId unit in which it is shown [-]
 */
export function formatIn(si: number, kind: KindId, unitId: string, options: FormatOptions = {}): string {
  const value = fromSI(si, unitId, kind)
  if (options.digits !== undefined) return withUnit(formatNumber(value, options.digits), unitId)
  if (options.uncertainty === undefined || !(options.uncertainty > 0))
    return withUnit(withoutFinalZeros(formatNumber(value, USUAL_DIGITS)), unitId)
  const spread = options.uncertainty / unitOf(unitId).factor
  return withUnit(formatNumber(value, significantFor(value, spread)), unitId)
}

/**
 * A quantity with its uncertainty, both ending at the same digit: '4.41 ± 0.12 mm²/s'.
 * @param si value [SI unit of the kind]
 * @param uncertainty half-width of its interval [SI unit of the kind]; zero, none or not finite is left out
 * @param kind kind of quantity [-]
 * @param unitId unit in which both are shown [-]
 */
export function formatWithUncertainty(
  si: number,
  uncertainty: number | undefined,
  kind: KindId,
  unitId: string,
): string {
  const spread = (uncertainty ?? 0) / unitOf(unitId).factor
  if (!Number.isFinite(spread) || spread <= 0) return formatIn(si, kind, unitId)
  const value = fromSI(si, unitId, kind)
  const shownSpread = formatNumber(spread, uncertaintyDigits(spread))
  const place = shownSpread.includes('×') ? undefined : (shownSpread.split('.')[1] ?? '').length
  // Written out, both can share their last decimal place; a power of ten on either side falls back to digits.
  const large = Math.abs(value) >= LARGEST_WRITTEN_OUT || place === undefined
  const shown = large
    ? formatNumber(value, significantFor(value, spread))
    : toPlace(value, place, magnitude(Number(shownSpread)) - uncertaintyDigits(spread) + 1)
  return withUnit(`${shown} ± ${shownSpread}`, unitId)
}

/** Rounded to a decimal place, which may stand left of the point: 12345 to 10² is '12300'. */
function toPlace(value: number, decimals: number, place: number): string {
  const step = place > 0 ? 10 ** place : 1
  const rounded = (Math.round(value / step) * step || 0) as number
  const shown = place > 0 ? Math.abs(rounded).toFixed(0) : Math.abs(value).toFixed(decimals)
  return value < 0 && Number(shown) !== 0 ? `−${shown}` : shown
}

/** Times read best in the unit that leaves a small number. */
function timeUnit(si: number): string {
  if (Math.abs(si) < 120) return 's'
  return Math.abs(si) < 2 * 3600 ? 'min' : 'h'
}

/**
 * A quantity in the unit that a person of this system expects: '45 psi', '310.3 kPa', '500 h'.
 * @param si value [SI unit of the kind]
 * @param kind kind of quantity [-]
 * @param system what the person asked for [-]
 * @param written unit id in which the data states it [-], kept while it belongs to that system
 */
export function formatForSystem(
  si: number,
  kind: KindId,
  system: UnitSystem,
  written?: string,
  options: FormatOptions = {},
): string {
  const unit = kind === 'time' && written === undefined ? timeUnit(si) : unitForSystem(kind, system, written)
  return formatIn(si, kind, unit, options)
}
