/**
 * Pseudo-random numbers from 0 up to 1, the same ones for the same seed: Tommy Ettinger's mulberry32, public domain.
 * Good enough to spread some thousand points; not for secrets.
 * @param seed whole number [-], 32 bits of it are used
 */
export function mulberry32(seed: number): () => number {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

/** Numbers of the standard normal distribution, made of uniform ones by the method of Box and Muller (1958). */
export function standardNormal(uniform: () => number): () => number {
  // 1 − u keeps the logarithm away from zero.
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform())
}
