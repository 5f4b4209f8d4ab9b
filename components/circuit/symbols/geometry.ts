/** x to the right and y down, from the middle of the symbol, in units of the drawing. */
export type Point = readonly [x: number, y: number]

export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

export interface Port {
  readonly at: Point
  /** A port that stands for one line to each of `count` like parts: the step from one line to the next. */
  readonly spread?: Point
}

export interface SymbolGeometry {
  /** What the legend calls it. */
  readonly title: string
  /** Ports by name, the fuel going from left to right before the symbol is turned. */
  readonly ports: (count: number) => Readonly<Record<string, Port>>
  /** What the symbol covers before it is turned. */
  readonly box: (count: number) => Box
}

/** Units of the drawing in one step of the grid. */
export const STEP = 20

/** Distance of two injectors, and so of two branches of a header. */
export const PITCH = 28

/** A header reaches this far past its outer branches. */
export const HEADER_END = 20

const around = (halfWidth: number, halfHeight: number): Box => ({
  left: -halfWidth,
  top: -halfHeight,
  right: halfWidth,
  bottom: halfHeight,
})

const inLine = (half: number) => () => ({ in: { at: [-half, 0] }, out: { at: [half, 0] } }) as const

/** Half the length of a row of parts, from the first one's middle to the last one's. */
export const halfRow = (count: number): number => ((count - 1) * PITCH) / 2

function defineSymbols<Id extends string>(symbols: Record<Id, SymbolGeometry>): Record<Id, SymbolGeometry> {
  return symbols
}

/** Every symbol that a circuit can name. Proportions follow ISO 1219-1: a pump's circle measures one module, a
 * gauge's three quarters of it; the module here is 40 units. */
export const symbols = defineSymbols({
  reservoir: {
    title: 'Reservoir, open to the air',
    ports: () => ({
      out: { at: [-80, -40] },
      relief: { at: [40, -40] },
      return: { at: [80, -40] },
    }),
    box: () => around(120, 40),
  },
  'heated-tank': {
    title: 'Heated tank, open to the air (coil drawn for this handbook)',
    ports: () => ({ out: { at: [-50, -40] }, return: { at: [50, -40] } }),
    box: () => around(90, 40),
  },
  'mixing-column': {
    title: 'Mixing column (drawn for this handbook)',
    ports: () => ({
      in: { at: [-24, 0] },
      out: { at: [0, 50] },
      relief: { at: [24, 0] },
      return: { at: [0, -50] },
    }),
    box: () => around(24, 50),
  },
  filter: {
    title: 'Filter or strainer',
    ports: inLine(30),
    box: () => around(30, 30),
  },
  'filter-pair': {
    title: 'Two filters in parallel',
    ports: inLine(60),
    box: () => around(60, 64),
  },
  pump: {
    title: 'Pump with fixed displacement',
    ports: () => ({ in: { at: [-20, 0] }, out: { at: [20, 0] }, shaft: { at: [0, -20] } }),
    box: () => around(20, 20),
  },
  'engine-pump': {
    title: 'Pump with fixed displacement, driven by the engine',
    ports: inLine(20),
    box: () => ({ left: -20, top: -62, right: 20, bottom: 20 }),
  },
  'electric-motor': {
    title: 'Electric motor',
    ports: () => ({ shaft: { at: [20, 0] } }),
    box: () => around(20, 20),
  },
  'pressure-valve': {
    title: 'Spring valve, shut until the pressure before it lifts it',
    ports: inLine(16),
    box: () => ({ left: -30, top: -42, right: 16, bottom: 30 }),
  },
  'check-valve': {
    title: 'Check valve',
    ports: inLine(20),
    box: () => around(20, 12),
  },
  restriction: {
    title: 'Restriction',
    ports: inLine(20),
    box: () => around(20, 12),
  },
  heater: {
    title: 'Heater',
    ports: inLine(30),
    box: () => around(30, 30),
  },
  'sight-glass': {
    title: 'Sight glass (flow indicator, simplified)',
    ports: inLine(20),
    box: () => around(20, 20),
  },
  'supply-header': {
    title: 'Supply header',
    ports: (count) => ({
      in: { at: [-halfRow(count) - HEADER_END, 0] },
      out: { at: [0, -3], spread: [PITCH, 0] },
    }),
    box: (count) => around(halfRow(count) + HEADER_END, 4),
  },
  'return-header': {
    title: 'Return header',
    ports: (count) => ({
      in: { at: [0, 3], spread: [PITCH, 0] },
      out: { at: [halfRow(count) + HEADER_END, 0] },
    }),
    box: (count) => around(halfRow(count) + HEADER_END, 4),
  },
  injectors: {
    title:
      'Injector or injection pump with inlet strainer, return filter and nozzle (drawn for this handbook)',
    ports: () => ({
      in: { at: [-40, 0], spread: [0, PITCH] },
      out: { at: [40, 0], spread: [0, PITCH] },
    }),
    box: (count) => around(40, halfRow(count) + 18),
  },
  'line-run': {
    title: 'Length of line between its two marks',
    ports: inLine(20),
    box: () => around(20, 8),
  },
  'pressure-gauge': {
    title: 'Pressure gauge',
    ports: () => ({ line: { at: [0, 22] } }),
    box: () => ({ left: -15, top: -15, right: 15, bottom: 22 }),
  },
  'vacuum-gauge': {
    title: 'Vacuum gauge',
    ports: () => ({ line: { at: [0, 22] } }),
    box: () => ({ left: -15, top: -15, right: 15, bottom: 22 }),
  },
  'differential-gauge': {
    title: 'Differential pressure gauge',
    ports: () => ({ high: { at: [-22, 0] }, low: { at: [22, 0] } }),
    box: () => around(22, 15),
  },
  thermometer: {
    title: 'Thermometer',
    ports: () => ({ line: { at: [0, 22] } }),
    box: () => ({ left: -15, top: -15, right: 15, bottom: 22 }),
  },
  viscometer: {
    title: 'Viscosity gauge (drawn for this handbook)',
    ports: () => ({ line: { at: [0, 22] } }),
    box: () => ({ left: -15, top: -15, right: 15, bottom: 22 }),
  },
})

export type SymbolId = keyof typeof symbols

export const symbolIds = Object.keys(symbols) as SymbolId[]

export const isSymbolId = (id: string): id is SymbolId => Object.hasOwn(symbols, id)

/** Names of the ports of a symbol; none for a symbol that is not known. */
export function portNames(symbol: string): readonly string[] {
  return isSymbolId(symbol) ? Object.keys(symbols[symbol].ports(1)) : []
}
