import type { CircuitModel } from './model.ts'
import { gaugeKinds } from './places.ts'
import type { CircuitData } from './types.ts'
import { splitEnd, type CircuitProblem } from './validate.ts'

/** Parts that let fuel go one way only, or that drive it. */
const oneWay: ReadonlySet<string> = new Set(['spring-valve', 'check-valve', 'motor-pump', 'engine-pump'])

/** Nodes that are reached from some, along the links as drawn or, where `bothWays`, against them too. */
function reached(model: CircuitModel, start: readonly number[], bothWays: boolean): Set<number> {
  const found = new Set(start)
  const open = [...start]
  for (let at = open.pop(); at !== undefined; at = open.pop())
    for (const { from, to } of model.links) {
      const next = from === at ? to : bothWays && to === at ? from : undefined
      if (next === undefined || found.has(next)) continue
      found.add(next)
      open.push(next)
    }
  return found
}

/** Lines that come out of an in, or go into an out. */
function portsTheWrongWay(model: CircuitModel, circuit: CircuitData): CircuitProblem[] {
  const labels = new Map(
    model.parts.filter(({ kind }) => oneWay.has(kind)).map(({ id, label }) => [id, label]),
  )
  return circuit.connections.flatMap(({ from, to }, index): CircuitProblem[] => {
    const wrong = [
      { side: 'from', end: from, port: 'in' },
      { side: 'to', end: to, port: 'out' },
    ].filter(({ end, port }) => splitEnd(end)[1] === port && labels.has(splitEnd(end)[0]))
    return wrong.map(({ side, end }) => ({
      path: ['connections', index, side],
      message: `«${end}»: ${labels.get(splitEnd(end)[0])} stands the wrong way round, against the drawn flow; accepted: a line into its in and one out of its out`,
    }))
  })
}

/**
 * What is wrong with a circuit that is whole as a net of lines but could not work.
 * @param model from layOut
 * @param circuit its data, for the paths
 * @returns problems: parts that no tank's pressure reaches, valves and pumps the wrong way round or without a way to
 * them, gauges without a tapping
 */
export function partProblems(model: CircuitModel, circuit: CircuitData): CircuitProblem[] {
  const problems = portsTheWrongWay(model, circuit)
  const pathOf = (id: string): (string | number)[] => {
    const at = circuit.elements.findIndex((element) => element.id === id)
    const pipe = circuit.connections.findIndex((connection) => connection.pipe?.id === id)
    return at >= 0 ? ['elements', at] : ['connections', pipe, 'pipe']
  }
  const tankNodes = model.nodes.flatMap(({ fixed }, node) => (typeof fixed === 'number' ? [node] : []))
  const mouths = tankNodes.filter((node) => model.nodes[node]?.mouth)
  const held = reached(model, tankNodes, true)
  const fed = reached(model, mouths, false)
  const pumped = reached(
    model,
    model.ends.flatMap((ends, part) => (ends && model.parts[part]?.kind.endsWith('-pump') ? [ends.out] : [])),
    false,
  )
  for (const [place, part] of model.parts.entries()) {
    const ends = model.ends[place]
    if (gaugeKinds.has(part.kind)) {
      if (part.tappings.length < (part.kind === 'drop-gauge' ? 2 : 1))
        problems.push({
          path: pathOf(part.id),
          message: `${part.label} has no tapping; accepted: a line from a place of the circuit to it`,
        })
      continue
    }
    if (!ends) continue
    if (!held.has(ends.in)) {
      problems.push({
        path: pathOf(part.id),
        message: `${part.label} is joined to no tank, so that nothing holds a pressure there; accepted: a way to a tank`,
      })
      continue
    }
    if (problems.length > 0 || !oneWay.has(part.kind)) continue
    const from = part.kind === 'spring-valve' ? pumped : fed
    if (!from.has(ends.in))
      problems.push({
        path: pathOf(part.id),
        message: `No way leads along the drawn lines from ${part.kind === 'spring-valve' ? 'a pump' : 'a tank'} to ${part.label}; it stands the wrong way round`,
      })
  }
  return problems
}
