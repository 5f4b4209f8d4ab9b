import {
  addDependencies,
  create,
  divideDependencies,
  multiplyDependencies,
  parseDependencies,
  powDependencies,
  subtractDependencies,
  unitDependencies,
} from 'mathjs'
import type { ConstantNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode, Unit } from 'mathjs'
import { acceptedIn, checkSI, convert, refuseUnit, settled } from './convert.ts'
import { formatIn } from './format.ts'
import { kinds, kindOf } from './kinds.ts'
import { quoted, refuse } from './number.ts'
import { translate } from './translate.ts'
import type { KindId, QuantityReading } from './types.ts'
import { unitOf } from './units.ts'

/**
 * mathjs with nothing but a parser, units and arithmetic. It compiles to closures, never to generated code, so
 * it runs under a content security policy without 'unsafe-eval'. The tree that it parses is walked here: no name
 * is ever looked up in mathjs.
 */
const math = create(
  {
    ...parseDependencies,
    ...unitDependencies,
    ...addDependencies,
    ...subtractDependencies,
    ...multiplyDependencies,
    ...divideDependencies,
    ...powDependencies,
  },
  { number: 'number', matrix: 'Array' },
)

type Value = number | Unit

class Refused extends Error {}

/** An SI unit of ours as mathjs spells it: 'kg/m3' is 'kg/m^3', 'N.m' is 'N m'. */
function siUnitOf(siUnit: string): Value {
  if (siUnit === '1') return 1
  const spelled = siUnit.replace(/([a-z])(\d)/g, '$1^$2').replace('.', ' ')
  if (!spelled.startsWith('1/')) return math.unit(1, spelled)
  const [base = '', power = '1'] = spelled.slice(2).split('^')
  return math.unit(1, `${base}^-${power}`)
}

/** The unit as a quantity of mathjs, its size taken from our table: no factor stands a second time. */
function quantityOf(unitId: string): Value {
  const { factor, siUnit } = unitOf(unitId)
  return math.multiply(factor, siUnitOf(siUnit)) as Value
}

const isUnit = (value: Value): value is Unit => typeof value !== 'number'
const comparable = (a: Value, b: Value) => (isUnit(a) && isUnit(b) ? a.equalBase(b) : isUnit(a) === isUnit(b))

/** What a value is, in words: 'a pressure', 'a volume flow'. */
function describe(value: Value): string {
  if (!isUnit(value)) return 'a number without a unit'
  const labels = Object.values(kinds)
    .filter((kind) => comparable(value, siUnitOf(kind.siUnit)))
    .map((kind) => kind.label)
  const common = ['pressure', 'temperature'].find((word) => labels.some((label) => label.includes(word)))
  const label = common ?? labels[0]
  if (label === undefined) return 'no kind of quantity known here'
  return `${/^[aeiou]/.test(label) ? 'an' : 'a'} ${label}`
}

function calculate(operation: string, a: Value, b: Value): Value {
  const adds = operation === 'add' || operation === 'subtract'
  if (adds && !comparable(a, b))
    throw new Refused(
      `${describe(a)} and ${describe(b)} cannot be ${operation === 'add' ? 'added' : 'subtracted'}`,
    )
  if (operation === 'pow' && isUnit(b)) throw new Refused('a power must be a number without a unit')
  const result = operate(operation, a, b)
  if (typeof result !== 'number' && !math.isUnit(result)) throw new Refused('it has no real result')
  // Units that cancel leave a plain number.
  return typeof result === 'number' || result.dimensions.some((power) => power !== 0) ? result : result.value
}

function operate(operation: string, a: Value, b: Value): unknown {
  if (operation === 'add') return math.add(a, b)
  if (operation === 'subtract') return math.subtract(a, b)
  if (operation === 'multiply') return math.multiply(a, b)
  if (operation === 'divide') return math.divide(a, b)
  if (operation === 'pow') return math.pow(a, b as number)
  throw new Refused(`${operation} is not read here`)
}

/** '5 ft 3 in' would be a product to the parser; a person means a sum, so both must be written out. */
function isUnitFactor(node: MathNode): boolean {
  if (node.type === 'OperatorNode') {
    const [base] = (node as OperatorNode).args
    return (node as OperatorNode).fn === 'pow' && base !== undefined && isUnitFactor(base)
  }
  return node.type === 'SymbolNode'
}

/** Value of the tree. Only numbers, names of units, + - * / ^ and parentheses are let through. */
function evaluate(node: MathNode, names: ReadonlyMap<string, string>): Value {
  if (node.type === 'ConstantNode') {
    const { value } = node as ConstantNode
    if (typeof value === 'number') return value
  }
  if (node.type === 'ParenthesisNode') return evaluate((node as ParenthesisNode).content, names)
  if (node.type === 'SymbolNode') {
    const unit = names.get((node as SymbolNode).name)
    if (unit !== undefined) return quantityOf(unit)
  }
  if (node.type === 'OperatorNode') {
    const { fn, args, implicit } = node as OperatorNode
    const [first, second] = args
    if (first && !second && (fn === 'unaryMinus' || fn === 'unaryPlus'))
      return calculate('multiply', fn === 'unaryMinus' ? -1 : 1, evaluate(first, names))
    if (first && second) {
      if (implicit && !isUnitFactor(second))
        throw new Refused('a sign (+ - * /) is missing between two of its parts')
      return calculate(fn, evaluate(first, names), evaluate(second, names))
    }
  }
  throw new Refused(`${node.type.replace(/Node$/, '').toLowerCase()} is not read here`)
}

/** Units with a zero or a reference of their own lose their meaning in a sum or a product. */
function unfitUnit(text: string, used: readonly string[], kind: KindId) {
  for (const unitId of used) {
    const { offset, onlyKind, symbol } = unitOf(unitId)
    if (kind === 'temperature' && offset !== 0)
      return refuse(
        `${quoted(text)}: ${symbol} cannot stand in a sum or a product, since its zero is not absolute zero`,
        `one number and ${symbol}, such as 40 ${symbol}, or a sum in K`,
      )
    if (onlyKind !== undefined && onlyKind !== kind)
      return (
        refuseUnit(text, unitId, kind) ??
        refuse(`${quoted(text)}: ${symbol} is read only alone`, `one number and ${symbol}`)
      )
  }
  return undefined
}

function read(text: string, kind: KindId, fieldUnit: string): QuantityReading {
  const translation = translate(text, kind)
  if (!translation.ok) return translation
  const used = [...new Set(translation.names.values())]
  const unfit = unfitUnit(text, used, kind)
  if (unfit) return unfit
  const result = evaluate(math.parse(translation.source), translation.names)
  if (!Number.isFinite(isUnit(result) ? result.value : result)) throw new Refused('it has no finite result')
  if (used.length === 0 && !isUnit(result)) {
    const reading = convert(text, result, fieldUnit, kind, fieldUnit)
    return reading.ok
      ? { ...reading, understood: `${text} = ${formatIn(reading.si, kind, fieldUnit)}` }
      : reading
  }
  const siUnit = siUnitOf(kindOf(kind).siUnit)
  if (!comparable(result, siUnit)) return refuse(`${quoted(text)} is ${describe(result)}`, acceptedIn(kind))
  const si = settled(isUnit(result) ? (math.divide(result, siUnit) as number) : result, kind)
  const refusal = checkSI(text, si, kind)
  if (refusal) return refusal
  const only = used.length === 1 ? used[0] : undefined
  const unit = only !== undefined && kindOf(kind).units.includes(only) ? only : fieldUnit
  return { ok: true, si, unit, understood: `${text} = ${formatIn(si, kind, fieldUnit)}` }
}

/**
 * Reads arithmetic with units: '5/8 in', '2 bar + 30 kPa', '20 L / 4 min', '3 1/2 in'. Numbers, units, + - * / ^
 * and parentheses; no functions, no names, no assignments. Never throws, never gives a number that is not finite.
 * @param text what was typed [-], up to 100 characters
 * @param kind kind of quantity of the field [-]
 * @param unitId unit of the field [-], for arithmetic without any unit
 * @source nist-sp811
 */
export function readExpression(text: string, kind: KindId, unitId: string): QuantityReading {
  try {
    return read(text, kind, unitId)
  } catch (error) {
    if (error instanceof Refused)
      return refuse(`${quoted(text)} cannot be read: ${error.message}`, acceptedIn(kind))
    return refuse(
      `${quoted(text)} cannot be read as arithmetic with units`,
      `such as 2 bar + 30 kPa, or ${acceptedIn(kind)}`,
    )
  }
}
