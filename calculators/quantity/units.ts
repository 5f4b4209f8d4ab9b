import type { KindId, Unit } from './types.ts'

/** Standard acceleration of gravity [m/s²], exact. @source nist-sp811 */
const GRAVITY = 9.80665
/** International inch and foot [m], avoirdupois pound [kg], US and imperial gallon [m³]: exact. @source nist-sp811 */
const INCH = 0.0254
const FOOT = 0.3048
const POUND = 0.45359237
const GALLON = 0.003785411784
const IMPERIAL_GALLON = 0.00454609
/** Oil barrel of 42 US gallons [m³]; the dry barrel of some unit libraries is another one. @source nist-sp811 */
const BARREL = 42 * GALLON
/** Densities [kg/m³] behind the conventional columns of mercury and of water. @source nist-sp811 */
const MERCURY = 13595.1
const WATER = 1000
/** Statute mile of 5280 ft [m], exact. @source nist-sp811 */
const MILE = 5280 * FOOT
/** International table: the factor of 1 cal/g, 4.1868 kJ/kg, makes 1 Btu/(lb·°F) as large as 1 cal/(g·°C). @source nist-sp811 */
const BTU = (4186.8 * POUND * 5) / 9
const MINUTE = 60
const HOUR = 3600

type Rest = Pick<Unit, 'offset' | 'onlyKind'>

/** `alsoTyped`: other spellings that are understood, parted by strokes. */
function unit(
  id: string,
  symbol: string,
  siUnit: string,
  factor: number,
  alsoTyped = '',
  rest: Partial<Rest> = {},
): Unit {
  return { id, symbol, siUnit, factor, alsoTyped: alsoTyped.split('|').filter(Boolean), offset: 0, ...rest }
}

/** A pressure unit that says which reference it counts from. */
function referred(id: string, factor: number, onlyKind: KindId, alsoTyped: string): Unit {
  return unit(id, id, 'Pa', factor, alsoTyped, { onlyKind })
}

const PSI = (POUND * GRAVITY) / INCH ** 2

/**
 * Every unit of the handbook: the only place where a factor stands. The expression reader takes its units from
 * here too. Exact definitions are combined in code, so that no rounded factor is carried. @source nist-sp811
 */
const table: readonly Unit[] = [
  unit('1', '', '1', 1),
  unit('%', '%', '1', 0.01, 'percent|per cent|pct'),
  unit('turn', 'turn', '1', 1, 'turns|rev|revolution|revolutions'),

  unit('m', 'm', 'm', 1, 'metre|metres|meter|meters'),
  unit('cm', 'cm', 'm', 0.01, 'centimetre|centimetres'),
  unit('mm', 'mm', 'm', 0.001, 'millimetre|millimetres|millimeter|millimeters'),
  unit('um', 'µm', 'm', 1e-6, 'micron|microns|micrometre|micrometres'),
  unit('km', 'km', 'm', 1000, 'kilometre|kilometres|kilometer|kilometers'),
  unit('mi', 'mi', 'm', MILE, 'mile|miles'),
  unit('in', 'in', 'm', INCH, 'inch|inches|"|in.'),
  unit('ft', 'ft', 'm', FOOT, "foot|feet|'|′"),

  unit('m2', 'm²', 'm2', 1, 'sq m|square metre|square metres'),
  unit('cm2', 'cm²', 'm2', 1e-4, 'sq cm'),
  unit('mm2', 'mm²', 'm2', 1e-6, 'sq mm'),
  unit('ft2', 'ft²', 'm2', FOOT ** 2, 'sq ft|square foot|square feet'),
  unit('in2', 'in²', 'm2', INCH ** 2, 'sq in|square inch|square inches'),

  unit('m3', 'm³', 'm3', 1, 'cubic metre|cubic metres|cu m'),
  unit('L', 'L', 'm3', 0.001, 'litre|litres|liter|liters|ltr|dm3'),
  unit('mL', 'mL', 'm3', 1e-6, 'millilitre|millilitres|cm3|cc'),
  unit('mm3', 'mm³', 'm3', 1e-9, 'cu mm|cubic millimetre|cubic millimetres'),
  unit('gal', 'US gal', 'm3', GALLON, 'gallon|gallons|USgal|US gallon|US gallons|USG'),
  unit(
    'impgal',
    'imp gal',
    'm3',
    IMPERIAL_GALLON,
    'imperial gallon|imperial gallons|UK gal|UK gallon|UK gallons|imp gallon',
  ),
  unit('bbl', 'bbl', 'm3', BARREL, 'oil barrel|oil barrels'),

  unit('kg', 'kg', 'kg', 1, 'kilogram|kilograms|kilo|kilos'),
  unit('g', 'g', 'kg', 0.001, 'gram|grams'),
  unit('t', 't', 'kg', 1000, 'tonne|tonnes|metric ton'),
  unit('lb', 'lb', 'kg', POUND, 'lbs|lbm|pound|pounds'),

  unit('s', 's', 's', 1, 'sec|secs|second|seconds'),
  unit('min', 'min', 's', MINUTE, 'mins|minute|minutes'),
  unit('h', 'h', 's', HOUR, 'hr|hrs|hour|hours'),
  unit('d', 'd', 's', 24 * HOUR, 'day|days'),

  unit('K', 'K', 'K', 1, 'kelvin|kelvins|degK'),
  unit('degC', '°C', 'K', 1, 'C|degrees C|deg C|° C|celsius|degrees Celsius', {
    offset: 273.15,
  }),
  unit('degF', '°F', 'K', 5 / 9, 'F|degrees F|deg F|° F|fahrenheit|degrees Fahrenheit', {
    offset: (459.67 * 5) / 9,
  }),

  unit('Pa', 'Pa', 'Pa', 1, 'pascal|pascals|N/m2'),
  unit('kPa', 'kPa', 'Pa', 1000, 'kilopascal|kilopascals'),
  unit('MPa', 'MPa', 'Pa', 1e6, 'megapascal|megapascals|N/mm2'),
  unit('bar', 'bar', 'Pa', 1e5, 'bars'),
  unit('mbar', 'mbar', 'Pa', 100, 'millibar|millibars|hPa'),
  unit('psi', 'psi', 'Pa', PSI, 'lbf/in2|lb/in2|pounds per square inch|psid'),
  unit('inHg', 'inHg', 'Pa', MERCURY * GRAVITY * INCH, '"Hg|" Hg|in Hg|inch Hg|inches Hg|inches of mercury'),
  unit('mmHg', 'mmHg', 'Pa', MERCURY * GRAVITY * 0.001, 'mm Hg|millimetres of mercury|mm of mercury'),
  unit(
    'inH2O',
    'inH₂O',
    'Pa',
    WATER * GRAVITY * INCH,
    '"H2O|inWC|" H2O|in H2O|in WC|in w.c.|inches of water|"WC|inches H2O',
  ),
  unit('ftH2O', 'ftH₂O', 'Pa', WATER * GRAVITY * FOOT, 'ft H2O|ftWC|feet of water'),
  unit('kgf/cm2', 'kgf/cm²', 'Pa', GRAVITY * 1e4, 'kg/cm2|kp/cm2'),
  referred('barg', 1e5, 'gaugePressure', 'bar(g)|bar gauge|bar g'),
  referred('psig', PSI, 'gaugePressure', 'psi(g)|psi gauge|psi g'),
  referred('kPag', 1000, 'gaugePressure', 'kPa(g)|kPa gauge|kPa g'),
  referred('bara', 1e5, 'absolutePressure', 'bar(a)|bar abs|bar absolute|bar a'),
  referred('psia', PSI, 'absolutePressure', 'psi(a)|psi abs|psi absolute|psi a'),
  referred('kPaa', 1000, 'absolutePressure', 'kPa(a)|kPa abs|kPa absolute|kPa a'),

  unit('kg/m3', 'kg/m³', 'kg/m3', 1),
  unit('g/mL', 'g/mL', 'kg/m3', 1000, 'g/cm3|g/cc'),
  unit('kg/L', 'kg/L', 'kg/m3', 1000, 'kg/dm3|kg/litre'),
  unit('lb/ft3', 'lb/ft³', 'kg/m3', POUND / FOOT ** 3, 'lb/cu ft|pcf'),

  unit('m2/s', 'm²/s', 'm2/s', 1),
  unit('mm2/s', 'mm²/s', 'm2/s', 1e-6),
  unit('cSt', 'cSt', 'm2/s', 1e-6, 'cs|centistoke|centistokes'),
  unit('St', 'St', 'm2/s', 1e-4, 'stoke|stokes'),

  unit('Pa.s', 'Pa·s', 'Pa.s', 1, 'pascal second|pascal seconds'),
  unit('mPa.s', 'mPa·s', 'Pa.s', 0.001),
  unit('cP', 'cP', 'Pa.s', 0.001, 'cps|centipoise'),

  unit('m/s', 'm/s', 'm/s', 1, 'metres/s|metres per second|meters per second'),
  unit('mm/s', 'mm/s', 'm/s', 0.001, 'millimetres per second'),
  unit('km/h', 'km/h', 'm/s', 1000 / HOUR, 'kph|kmh|km/hr|kilometres per hour'),
  unit('ft/s', 'ft/s', 'm/s', FOOT, 'fps|feet per second'),
  unit('mph', 'mph', 'm/s', MILE / HOUR, 'mi/h|miles per hour'),

  unit('m3/s', 'm³/s', 'm3/s', 1),
  unit('m3/h', 'm³/h', 'm3/s', 1 / HOUR, 'm3/hr|m3/hour|cmh'),
  unit('L/s', 'L/s', 'm3/s', 0.001, 'lps|litres/s'),
  unit('L/min', 'L/min', 'm3/s', 0.001 / MINUTE, 'lpm|litres/min|liters/min|litres per minute'),
  unit('L/h', 'L/h', 'm3/s', 0.001 / HOUR, 'lph|L/hr|litres/h|litres per hour'),
  unit(
    'gal/min',
    'US gal/min',
    'm3/s',
    GALLON / MINUTE,
    'gpm|US gpm|USgpm|gallons/min|gallons per minute|US gallons per minute',
  ),
  unit('gal/h', 'US gal/h', 'm3/s', GALLON / HOUR, 'gph|US gph|USgph|gal/hr|gallons/h|gallons per hour'),
  unit('impgal/min', 'imp gal/min', 'm3/s', IMPERIAL_GALLON / MINUTE, 'igpm|imp gpm|UK gal/min'),
  unit('impgal/h', 'imp gal/h', 'm3/s', IMPERIAL_GALLON / HOUR, 'igph|imp gph|UK gal/h'),

  unit('kg/s', 'kg/s', 'kg/s', 1),
  unit('kg/h', 'kg/h', 'kg/s', 1 / HOUR, 'kg/hr|kg/hour'),
  unit('g/h', 'g/h', 'kg/s', 0.001 / HOUR, 'g/hr|g/hour|grams per hour'),
  unit('lb/h', 'lb/h', 'kg/s', POUND / HOUR, 'lb/hr|lbs/h|lbs/hr|pph'),

  unit('W', 'W', 'W', 1, 'watt|watts'),
  unit('kW', 'kW', 'W', 1000, 'kilowatt|kilowatts'),
  unit('hp', 'hp', 'W', 550 * FOOT * POUND * GRAVITY, 'horsepower|bhp'),

  unit('kg/J', 'kg/J', 'kg/J', 1),
  unit('g/(kW.h)', 'g/(kW·h)', 'kg/J', 0.001 / (1000 * HOUR), 'g/kWh|g/kW h|g/kW/h|grams per kilowatt hour'),
  unit(
    'lb/(hp.h)',
    'lb/(hp·h)',
    'kg/J',
    POUND / (550 * FOOT * POUND * GRAVITY * HOUR),
    'lb/hp-h|lb/hp-hr|lb/bhp-hr|lb/hp h|lb/hph',
  ),

  unit('rad/s', 'rad/s', 'rad/s', 1),
  unit('rpm', 'rpm', 'rad/s', (2 * Math.PI) / MINUTE, 'rev/min|r/min|1/min|turns/min|turn/min'),

  unit('N.m', 'N·m', 'N.m', 1, 'Nm|newton metre|newton metres'),
  unit(
    'lbf.ft',
    'lbf·ft',
    'N.m',
    POUND * GRAVITY * FOOT,
    'lb ft|lb-ft|lbf-ft|ft-lb|ft-lbs|ft.lbs|foot pounds|foot-pounds|ft-lbf|ft lb|ft lbf',
  ),

  unit('1/K', '1/K', '1/K', 1, '/K|K-1|1/degC|/degC|1/°C|/°C|per K|per degC'),
  unit('1/degF', '1/°F', '1/K', 9 / 5, '/degF|/°F|per degF|1/F|/F'),

  unit('N', 'N', 'N', 1, 'newton|newtons'),
  unit('kN', 'kN', 'N', 1000, 'kilonewton|kilonewtons'),
  unit('lbf', 'lbf', 'N', POUND * GRAVITY, 'pound force|pounds force'),
  unit('N/m', 'N/m', 'N/m', 1),
  unit('N/mm', 'N/mm', 'N/m', 1000),
  unit('lbf/in', 'lbf/in', 'N/m', (POUND * GRAVITY) / INCH, 'lb/in|lbs/in|lbf/inch'),

  unit('J/(kg.K)', 'J/(kg·K)', 'J/(kg.K)', 1, 'J/kgK|J/kg/K'),
  unit('kJ/(kg.K)', 'kJ/(kg·K)', 'J/(kg.K)', 1000, 'kJ/kgK|kJ/kg/K'),
  unit('Btu/(lb.degF)', 'Btu/(lb·°F)', 'J/(kg.K)', (BTU / POUND) * (9 / 5), 'Btu/lb/°F'),
  unit('W/(m2.K)', 'W/(m²·K)', 'W/(m2.K)', 1, 'W/m2K|W/m2/K'),
  unit(
    'Btu/(h.ft2.degF)',
    'Btu/(h·ft²·°F)',
    'W/(m2.K)',
    (BTU * 9) / (5 * HOUR * FOOT ** 2),
    'Btu/(hr.ft2.°F)|Btu/h/ft2/°F',
  ),
  unit('W/K', 'W/K', 'W/K', 1, 'W/°C'),
  unit('kW/K', 'kW/K', 'W/K', 1000, 'kW/°C'),
  unit('Btu/(h.degF)', 'Btu/(h·°F)', 'W/K', (BTU * 9) / (5 * HOUR), 'Btu/(hr.°F)|Btu/h/°F'),

  unit('mg/kg', 'mg/kg', '1', 1e-6, 'ppm|ppm(m/m)|ppmw|mg/kilogram'),
  unit('mg/L', 'mg/L', 'kg/m3', 0.001, 'mg/litre|mg/l|g/m3'),
  unit('1/mL', '1/mL', '1/m3', 1e6, '/mL|per mL|particles/mL|particles per mL|1/ml|counts/mL'),
  unit('1/m3', '1/m³', '1/m3', 1, '/m3|per m3'),

  unit('J/kg', 'J/kg', 'J/kg', 1),
  unit('kJ/kg', 'kJ/kg', 'J/kg', 1000),
  unit('MJ/kg', 'MJ/kg', 'J/kg', 1e6, 'GJ/t'),
  unit('kWh/kg', 'kWh/kg', 'J/kg', 1000 * HOUR, 'kW.h/kg'),
  unit('Btu/lb', 'Btu/lb', 'J/kg', BTU / POUND, 'Btu/lbm'),
  unit('J/m3', 'J/m³', 'J/m3', 1),
  unit('GJ/m3', 'GJ/m³', 'J/m3', 1e9),
  unit('MJ/L', 'MJ/L', 'J/m3', 1e9, 'MJ/litre|MJ/dm3'),
  unit('kWh/L', 'kWh/L', 'J/m3', 1e6 * HOUR, 'kW.h/L|kWh/litre'),
  unit('Btu/gal', 'Btu/US gal', 'J/m3', BTU / GALLON, 'Btu/gallon'),

  unit(
    'g/(hp.h)',
    'g/(hp·h)',
    'kg/J',
    0.001 / (550 * FOOT * POUND * GRAVITY * HOUR),
    'g/hp-h|g/hph|g/bhph|g/bhp-h|g/bhp-hr|g/hp h',
  ),
]

export const units: Readonly<Record<string, Unit>> = Object.freeze(
  Object.assign(
    Object.create(null) as Record<string, Unit>,
    Object.fromEntries(table.map((row) => [row.id, row])),
  ),
)

/**
 * The unit of this id.
 * @param id unit id [-], one of `units`; another one throws, since ids come from code and never from a person
 * @source nist-sp811
 */
export function unitOf(id: string): Unit {
  const found = units[id]
  if (!found) throw new Error(`«${id}» is not a unit id; allowed: ${Object.keys(units).join(', ')}`)
  return found
}

/**
 * Value in the SI unit of this unit's kind. [SI]
 * @param value number in that unit [unitId], any finite one; an overflow gives an infinity, so check it
 * @param unitId unit id [-]
 * @param kind kind of quantity [-]: a temperature difference is converted without the scale's offset
 * @source nist-sp811
 */
export function toSI(value: number, unitId: string, kind: KindId): number {
  const { factor, offset } = unitOf(unitId)
  return kind === 'temperatureDifference' ? value * factor : value * factor + offset
}

/**
 * Value in this unit; the inverse of `toSI`. [unitId]
 * @param si number in the kind's SI unit [SI], any finite one
 * @param unitId unit id [-]
 * @param kind kind of quantity [-]: a temperature difference is converted without the scale's offset
 * @source nist-sp811
 */
export function fromSI(si: number, unitId: string, kind: KindId): number {
  const { factor, offset } = unitOf(unitId)
  return kind === 'temperatureDifference' ? si / factor : (si - offset) / factor
}
