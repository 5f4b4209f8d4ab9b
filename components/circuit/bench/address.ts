import { operatingStates } from '../../../calculators/circuit/types.ts'
import { formatNumber, withoutFinalZeros } from '../../../calculators/quantity/format.ts'
import { quote, readEntries, siteEntries } from '../../calculator/address-entries.ts'
import { slidersOf, usualSetting, type Slider } from './setting.ts'
import type { BenchData, BenchState, Setting } from './types.ts'

/** Form of the address. A link made today must be read rightly by every later edition. */
const VERSION = 1

/** Longer than any link the bench can write, short enough that nothing has to cope with more. */
const LONGEST_QUERY = 4000
const DIGITS = 4
const ICE_POINT = 273.15

const FAULT_PREFIX = 'fault.'

/** How a slider's value stands in an address: in degrees Celsius, per cent or metres, so that a person can read it. */
const sliderKeys: Readonly<Record<string, { slider: Slider; unit: string; factor: number; offset: number }>> =
  {
    tank: { slider: 'tankTemperature', unit: '°C', factor: 1, offset: ICE_POINT },
    air: { slider: 'ambientTemperature', unit: '°C', factor: 1, offset: ICE_POINT },
    level: { slider: 'tankLevel', unit: '%', factor: 0.01, offset: 0 },
    height: { slider: 'height', unit: 'm', factor: 1, offset: 0 },
  }

const colourings = ['pressure', 'temperature'] as const

const short = (value: number): string => withoutFinalZeros(formatNumber(value, DIGITS)).replace('−', '-')

/** A plain number and nothing else; '7e-1', '0x1', '' and ' ' are none. */
const numberIn = (text: string): number => (/^-?\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN)

export interface AddressReading {
  readonly state: BenchState
  /** A sentence for each thing that could not be used. */
  readonly problems: readonly string[]
}

/** What the bench shows before anybody has set anything. */
export function startState(data: BenchData, setting: Setting = usualSetting(data)): BenchState {
  return { setting, colouring: 'pressure' }
}

/**
 * The bench as an address describes it. What cannot be used is named and left as it is at the start: a link of an
 * older edition, or one that somebody changed by hand, still opens with the rest.
 * @param query the part of the address behind the question mark
 */
export function readAddress(data: BenchData, query: string): AddressReading {
  return readEntries(query, LONGEST_QUERY, startState(data), (before, key, value) =>
    readEntry(data, before, key, value),
  )
}

/** The state with one entry of the address in it, or a sentence that says why not. */
function readEntry(data: BenchData, before: BenchState, key: string, value: string): BenchState | string {
  if (key.startsWith(FAULT_PREFIX)) return readFault(data, before, key.slice(FAULT_PREFIX.length), value)
  const withSetting = (setting: Partial<Setting>): BenchState => ({
    ...before,
    setting: { ...before.setting, ...setting },
  })
  const choice = <Option extends string>(
    label: string,
    options: readonly Option[],
    use: (option: Option) => BenchState,
  ) => {
    const found = options.find((option) => option === value)
    return found === undefined
      ? `${label}: read ${quote(value)}; accepted: ${options.join(', ')}.`
      : use(found)
  }
  const sliderKey = Object.hasOwn(sliderKeys, key) ? sliderKeys[key] : undefined
  if (sliderKey !== undefined) {
    const { slider, unit, factor, offset } = sliderKey
    const { label, least, most } = slidersOf(data)[slider]
    const si = numberIn(value) * factor + offset
    const [lowest, highest] = [least, most].map((limit) => short((limit - offset) / factor))
    if (!(si >= least && si <= most))
      return `${label}: read ${quote(value)}; accepted: ${lowest} to ${highest}, in ${unit}.`
    return withSetting({ [slider]: si })
  }
  switch (key) {
    case 'v': {
      const version = numberIn(value)
      if (version > VERSION)
        return `The address was made by a later edition of this page (form ${quote(value)}; this one reads ${VERSION}). What it says that is unknown here was left out.`
      return Number.isInteger(version)
        ? before
        : `Form of the address: read ${quote(value)}; accepted: a whole number up to ${VERSION}.`
    }
    case 'state':
      return choice('State of the engine', operatingStates, (state) => withSetting({ state }))
    case 'fuel':
      return choice(
        'Fuel',
        data.circuit.fuels.filter((id) => data.fuels.some((fuel) => fuel.id === id)),
        (fuel) => withSetting({ fuel }),
      )
    case 'colour':
      return choice('Colour of the lines', colourings, (colouring) => ({ ...before, colouring }))
    case 'part':
      return choice(
        'Part',
        data.circuit.elements.map((element) => element.id),
        (part) => ({ ...before, part }),
      )
    default:
      return `Read ${quote(key)}, which is nothing that can be set here; accepted: state, fuel, ${Object.keys(sliderKeys).join(', ')}, colour, part, and ${FAULT_PREFIX} with the id of a fault.`
  }
}

function readFault(data: BenchData, before: BenchState, id: string, value: string): BenchState | string {
  const fault = data.faults.find((candidate) => candidate.id === id)
  if (fault === undefined)
    return `Read the fault ${quote(id)}, which this circuit does not have, or no longer by this name. It was left out; the list of the faults shows those that there are.`
  const severity = numberIn(value)
  if (!(severity >= 0 && severity <= 1))
    return `${fault.title}: read the severity ${quote(value)}; accepted: 0 to 1. The fault was left off.`
  return {
    ...before,
    setting: { ...before.setting, faults: { ...before.setting.faults, [fault.id]: severity } },
  }
}

function entriesOf({ setting, colouring, part }: BenchState): [string, string][] {
  const sliders = Object.entries(sliderKeys).map(([key, { slider, factor, offset }]): [string, string] => [
    key,
    short((setting[slider] - offset) / factor),
  ])
  return [
    ['state', setting.state],
    ['fuel', setting.fuel],
    ...sliders,
    ...Object.entries(setting.faults).map(([id, severity]): [string, string] => [
      FAULT_PREFIX + id,
      short(severity),
    ]),
    ['colour', colouring],
    ...(part === undefined ? [] : [['part', part] as [string, string]]),
  ]
}

/**
 * The query string that describes a bench: nothing for the bench as it starts, otherwise only what differs.
 * @param query the page's own, of which the keys of other parts of the site are kept
 */
export function writeAddress(data: BenchData, state: BenchState, query = ''): string {
  const usual = new Map(entriesOf(startState(data)))
  const parameters = siteEntries(query, LONGEST_QUERY)
  const own = entriesOf(state).filter(([key, value]) => usual.get(key) !== value)
  if (own.length > 0) parameters.append('v', String(VERSION))
  for (const [key, value] of own) parameters.append(key, value)
  return parameters.toString()
}
