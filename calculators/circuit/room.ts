/** Numbers that are asked for at a time. */
const PIECE = 1500

/** Takes the next so many numbers as an array. */
export type TakeNumbers = (length: number) => Float64Array

/**
 * Arrays of zeros, many in one piece of memory: a state needs dozens, and each for itself costs as much as thirty
 * logarithms.
 * @returns takes the next array
 */
export function room(): TakeNumbers {
  let take = sharesOf(new Float64Array(PIECE))
  let left = PIECE
  return (length) => {
    if (length > left) {
      left = Math.max(length, PIECE)
      take = sharesOf(new Float64Array(left))
    }
    left -= length
    return take(length)
  }
}

/** Takes the numbers of an array one stretch after the other. */
export function sharesOf(all: Float64Array): TakeNumbers {
  let used = 0
  return (length) => {
    const start = all.byteOffset + used * all.BYTES_PER_ELEMENT
    used += length
    return new Float64Array(all.buffer, start, length)
  }
}
