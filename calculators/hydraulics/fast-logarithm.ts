// Logarithm and power for the innermost loop of a network, which would spend most of its time in Math.log and Math.exp.
// A table finds the nearest of 64 numbers between two powers of two; a short series, without a division, does the rest.

/** A number and, in the same place, its bits. */
const NUMBER = new Float64Array(1)
const WORDS = new Int32Array(NUMBER.buffer)
/** Which of the two words holds sign and exponent. */
const HIGH = new Uint8Array(Uint16Array.of(1).buffer)[0] === 1 ? 1 : 0
/** Exponent bits of numbers from 1 to 2, mantissa bits of that word, and how its first six are reached. */
const ONE = 0x3ff00000
const MANTISSA = 0xfffff
const SHIFT = 14
const PIECES = 64

const middles = Float64Array.from({ length: PIECES }, (_, i) => 1 + (i + 0.5) / PIECES)
const INVERSES = middles.map((middle) => 1 / middle)
const LOGARITHMS = middles.map(Math.log)
const POWERS = middles.map((middle) => middle ** -0.9)
/** 2^−0.9k for every exponent that a number can have. */
const POWERS_OF_TWO = Float64Array.from({ length: 2048 }, (_, i) => 2 ** (-0.9 * (i - 1023)))

/**
 * Natural logarithm. [-]
 * @param value above 1e-300 and below 1e300 [-]
 * @returns the logarithm, within 1e-12
 * @source common practice (exponent, table and series)
 */
export function fastLogarithm(value: number): number {
  NUMBER[0] = value
  const high = WORDS[HIGH] as number
  WORDS[HIGH] = (high & MANTISSA) | ONE
  const piece = (high & MANTISSA) >> SHIFT
  const r = (NUMBER[0] as number) * (INVERSES[piece] as number) - 1
  const square = r * r
  const series = r + square * (-1 / 2 + r * (1 / 3)) + square * square * (-1 / 4 + r * (1 / 5))
  return ((high >> 20) - 1023) * Math.LN2 + (LOGARITHMS[piece] as number) + series
}

/**
 * A number to the power −0.9. [-]
 * @param value above 1e-300 and below 1e300 [-]
 * @returns the power, within 1e-12 of its size
 * @source common practice (exponent, table and series)
 */
export function powerMinusNineTenths(value: number): number {
  NUMBER[0] = value
  const high = WORDS[HIGH] as number
  WORDS[HIGH] = (high & MANTISSA) | ONE
  const piece = (high & MANTISSA) >> SHIFT
  const r = (NUMBER[0] as number) * (INVERSES[piece] as number) - 1
  const square = r * r
  const series = 1 - 0.9 * r + square * (0.855 - 0.8265 * r) + square * square * (0.8058375 - 0.78972075 * r)
  return (POWERS_OF_TWO[high >> 20] as number) * (POWERS[piece] as number) * series
}
