/** What the checks need to know of a circuit; positions and words are none of their business. */
export interface CircuitNet {
  readonly elements: readonly {
    readonly id: string
    readonly symbol: string
    readonly number?: number | undefined
  }[]
  readonly junctions: readonly { readonly id: string }[]
  readonly connections: readonly { readonly from: string; readonly to: string; readonly line: string }[]
}

export interface CircuitProblem {
  /** Where in the data: ['connections', 3, 'to']. */
  readonly path: (string | number)[]
  /** What was read and what is allowed. */
  readonly message: string
}

/** A junction joins up to four lines, one from each side. */
const junctionPorts: readonly string[] = ['left', 'right', 'up', 'down']

/** Lines that carry fuel; the others carry a pressure, a temperature or a torque. */
const flowLines: ReadonlySet<string> = new Set(['suction', 'supply', 'return', 'drain'])

/**
 * All that is wrong with a circuit as a net of lines: doubled ids, ends that meet no port, ports with no line or
 * with two, junctions of fewer than three lines, and a numbered way that the lines do not follow.
 * @param net elements, junctions and connections as the data gives them
 * @param portsOf names of the ports that a symbol has
 * @returns the problems in the order of the data; none when the circuit is whole
 */
export function circuitProblems(
  net: CircuitNet,
  portsOf: (symbol: string) => readonly string[],
): CircuitProblem[] {
  const ports = new Map<string, readonly string[]>()
  const problems: CircuitProblem[] = []
  const declare = (id: string, names: readonly string[], path: (string | number)[]): void => {
    if (ports.has(id)) {
      problems.push({ path, message: `«${id}» stands twice; an id is given to one element or junction only` })
    } else ports.set(id, names)
  }
  net.elements.forEach((element, index) =>
    declare(element.id, portsOf(element.symbol), ['elements', index, 'id']),
  )
  net.junctions.forEach((junction, index) => declare(junction.id, junctionPorts, ['junctions', index, 'id']))
  problems.push(...endProblems(net, ports))
  if (problems.length > 0) return problems
  problems.push(...openPorts(net, ports))
  return problems.length > 0 ? problems : wayProblems(net)
}

/** Ends that name no element or no port of it, and ports that two lines claim. */
function endProblems(net: CircuitNet, ports: Map<string, readonly string[]>): CircuitProblem[] {
  const problems: CircuitProblem[] = []
  const taken = new Map<string, number>()
  net.connections.forEach((connection, index) => {
    for (const side of ['from', 'to'] as const) {
      const end = connection[side]
      const path = ['connections', index, side]
      const [id, port] = splitEnd(end)
      const names = ports.get(id)
      if (!names) {
        const allowed = [...ports.keys()].join(', ')
        problems.push({
          path,
          message: `«${id}» is no element or junction of this circuit; allowed: ${allowed}`,
        })
      } else if (!names.includes(port)) {
        problems.push({ path, message: `«${port}» is no port of ${id}; allowed: ${names.join(', ')}` })
      } else if (taken.has(end)) {
        problems.push({
          path,
          message: `«${end}» already ends connection ${taken.get(end)}; put a junction where lines meet`,
        })
      } else taken.set(end, index)
    }
  })
  return problems
}

function openPorts(net: CircuitNet, ports: Map<string, readonly string[]>): CircuitProblem[] {
  const used = new Set(net.connections.flatMap(({ from, to }) => [from, to]))
  const free = (id: string): string[] =>
    (ports.get(id) ?? []).map((port) => `${id}.${port}`).filter((end) => !used.has(end))
  const problems: CircuitProblem[] = []
  net.elements.forEach(({ id }, index) => {
    const open = free(id)
    if (open.length === 0) return
    const all = open.length === ports.get(id)?.length
    const message = all
      ? `${id} is on no line; connect ${open.join(', ')}`
      : `${open.join(', ')} is an open end; every port takes one connection`
    problems.push({ path: ['elements', index, 'id'], message })
  })
  net.junctions.forEach(({ id }, index) => {
    const joined = junctionPorts.length - free(id).length
    if (joined >= 3) return
    problems.push({
      path: ['junctions', index, 'id'],
      message: `${id} joins ${joined} lines; a junction joins three or four, a bend is written as via`,
    })
  })
  return problems
}

/**
 * The numbers run 1 to n, and the lines lead from each to the next and from the last back to an earlier one: to the tank,
 * or in a circulation to the place where new fuel joins it.
 */
function wayProblems(net: CircuitNet): CircuitProblem[] {
  const numbered = net.elements
    .map((element, index) => ({ id: element.id, number: element.number, index }))
    .filter((element): element is typeof element & { number: number } => element.number !== undefined)
    .sort((a, b) => a.number - b.number)
  return numbered.flatMap(({ id, number, index }, place): CircuitProblem[] => {
    const path = ['elements', index, 'number']
    if (number !== place + 1) {
      return [{ path, message: `${id} is number ${number}; the next free place on the way is ${place + 1}` }]
    }
    const reached = downstreamOf(net, id)
    const next = numbered[place + 1]
    if (next) {
      if (reached.has(next.id)) return []
      return [{ path, message: `no line leads from ${id} (${number}) to ${next.id} (${next.number})` }]
    }
    if (numbered.slice(0, place).some((earlier) => reached.has(earlier.id))) return []
    return [{ path, message: `no line leads from ${id} (${number}) back to an earlier number` }]
  })
}

/**
 * The elements that fuel leaving this one reaches first, through lines and junctions and no other element.
 * @param net the circuit
 * @param id id of an element
 */
export function downstreamOf(net: CircuitNet, id: string): Set<string> {
  const junctions = new Set(net.junctions.map((junction) => junction.id))
  const reached = new Set<string>()
  const open = [id]
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    for (const { from, to, line } of net.connections) {
      const [start] = splitEnd(from)
      const [end] = splitEnd(to)
      if (start !== at || reached.has(end) || !flowLines.has(line)) continue
      reached.add(end)
      if (junctions.has(end)) open.push(end)
    }
  }
  return new Set([...reached].filter((end) => !junctions.has(end)))
}

/** 'supply-pump.in' as its element and its port. */
export function splitEnd(end: string): [id: string, port: string] {
  const dot = end.indexOf('.')
  return [end.slice(0, dot), end.slice(dot + 1)]
}
