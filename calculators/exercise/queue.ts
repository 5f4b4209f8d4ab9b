interface Waiting<Item> {
  readonly cost: number
  readonly item: Item
}

/** Hands out what was put in, the cheapest first: a binary heap. */
export class Queue<Item> {
  readonly #heap: Waiting<Item>[] = []

  put(cost: number, item: Item): void {
    const heap = this.#heap
    const entry = { cost, item }
    let place = heap.length
    heap.push(entry)
    while (place > 0) {
      const above = (place - 1) >> 1
      const parent = heap[above]
      if (parent === undefined || parent.cost <= cost) break
      heap[place] = parent
      place = above
    }
    heap[place] = entry
  }

  take(): Waiting<Item> | undefined {
    const heap = this.#heap
    const [cheapest] = heap
    const last = heap.pop()
    if (cheapest === undefined || last === undefined || heap.length === 0) return cheapest
    let place = 0
    for (;;) {
      const [left, right] = [heap[2 * place + 1], heap[2 * place + 2]]
      if (left === undefined) break
      const below = right !== undefined && right.cost < left.cost ? 2 * place + 2 : 2 * place + 1
      const child = heap[below]
      if (child === undefined || child.cost >= last.cost) break
      heap[place] = child
      place = below
    }
    heap[place] = last
    return cheapest
  }
}
