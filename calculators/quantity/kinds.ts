import type { Kind, KindId, UnitSystem } from './types.ts'
import { units } from './units.ts'

const pressureUnits = ['kPa', 'bar', 'psi', 'Pa', 'MPa', 'mbar', 'inHg', 'mmHg', 'inH2O', 'ftH2O', 'kgf/cm2']

function kind(
  id: KindId,
  label: string,
  siUnit: string,
  offered: readonly string[],
  si: string,
  us: string = si,
  mixed: string = us,
): Kind {
  return { id, label, siUnit, units: offered, preferred: { si, us, mixed } }
}

export const kinds: Readonly<Record<KindId, Kind>> = {
  ratio: kind('ratio', 'ratio', '1', ['1', '%', 'turn'], '1'),
  length: kind('length', 'length', 'm', ['m', 'mm', 'cm', 'um', 'in', 'ft'], 'm', 'ft', 'm'),
  distance: kind('distance', 'distance travelled', 'm', ['km', 'mi', 'm'], 'km', 'mi'),
  area: kind('area', 'area', 'm2', ['m2', 'cm2', 'mm2', 'in2', 'ft2'], 'cm2', 'in2', 'cm2'),
  volume: kind('volume', 'volume', 'm3', ['L', 'mL', 'mm3', 'm3', 'gal', 'impgal', 'bbl'], 'L', 'gal'),
  mass: kind('mass', 'mass', 'kg', ['kg', 'g', 't', 'lb'], 'kg', 'lb', 'kg'),
  time: kind('time', 'time', 's', ['s', 'min', 'h', 'd'], 's'),
  temperature: kind('temperature', 'temperature', 'K', ['degC', 'degF', 'K'], 'degC', 'degF', 'degC'),
  temperatureDifference: kind(
    'temperatureDifference',
    'temperature difference',
    'K',
    ['K', 'degC', 'degF'],
    'K',
    'degF',
    'K',
  ),
  gaugePressure: kind('gaugePressure', 'gauge pressure', 'Pa', pressureUnits, 'kPa', 'psi'),
  absolutePressure: kind('absolutePressure', 'absolute pressure', 'Pa', pressureUnits, 'kPa', 'psi'),
  pressureDifference: kind('pressureDifference', 'pressure difference', 'Pa', pressureUnits, 'kPa', 'psi'),
  density: kind(
    'density',
    'density',
    'kg/m3',
    ['kg/m3', 'kg/L', 'g/mL', 'lb/ft3'],
    'kg/m3',
    'lb/ft3',
    'kg/m3',
  ),
  kinematicViscosity: kind(
    'kinematicViscosity',
    'kinematic viscosity',
    'm2/s',
    ['mm2/s', 'cSt', 'm2/s', 'St'],
    'mm2/s',
    'cSt',
    'mm2/s',
  ),
  dynamicViscosity: kind(
    'dynamicViscosity',
    'dynamic viscosity',
    'Pa.s',
    ['mPa.s', 'cP', 'Pa.s'],
    'mPa.s',
    'cP',
    'mPa.s',
  ),
  volumeFlow: kind(
    'volumeFlow',
    'volume flow',
    'm3/s',
    ['L/min', 'L/h', 'L/s', 'm3/h', 'm3/s', 'gal/min', 'gal/h', 'impgal/min', 'impgal/h'],
    'L/min',
    'gal/min',
  ),
  massFlow: kind('massFlow', 'mass flow', 'kg/s', ['kg/h', 'kg/s', 'g/h', 'lb/h'], 'kg/h', 'lb/h', 'kg/h'),
  power: kind('power', 'power', 'W', ['kW', 'W', 'hp'], 'kW', 'hp', 'kW'),
  travelSpeed: kind('travelSpeed', 'speed of travel', 'm/s', ['km/h', 'mph', 'm/s'], 'km/h', 'mph'),
  specificConsumption: kind(
    'specificConsumption',
    'specific fuel consumption',
    'kg/J',
    ['g/(kW.h)', 'g/(hp.h)', 'lb/(hp.h)', 'kg/J'],
    'g/(kW.h)',
    'lb/(hp.h)',
    'g/(kW.h)',
  ),
  rotationalSpeed: kind('rotationalSpeed', 'rotational speed', 'rad/s', ['rpm', 'rad/s'], 'rpm'),
  torque: kind('torque', 'torque', 'N.m', ['N.m', 'lbf.ft'], 'N.m', 'lbf.ft', 'N.m'),
  volumeExpansion: kind(
    'volumeExpansion',
    'volume expansion',
    '1/K',
    ['1/K', '1/degF'],
    '1/K',
    '1/degF',
    '1/K',
  ),
  force: kind('force', 'force', 'N', ['N', 'kN', 'lbf'], 'N', 'lbf', 'N'),
  springRate: kind('springRate', 'spring rate', 'N/m', ['N/mm', 'N/m', 'lbf/in'], 'N/mm', 'lbf/in', 'N/mm'),
  specificHeat: kind(
    'specificHeat',
    'specific heat',
    'J/(kg.K)',
    ['kJ/(kg.K)', 'J/(kg.K)', 'Btu/(lb.degF)'],
    'kJ/(kg.K)',
    'Btu/(lb.degF)',
    'kJ/(kg.K)',
  ),
  heatTransferCoefficient: kind(
    'heatTransferCoefficient',
    'heat transfer coefficient',
    'W/(m2.K)',
    ['W/(m2.K)', 'Btu/(h.ft2.degF)'],
    'W/(m2.K)',
    'Btu/(h.ft2.degF)',
    'W/(m2.K)',
  ),
  thermalConductance: kind(
    'thermalConductance',
    'thermal conductance',
    'W/K',
    ['W/K', 'kW/K', 'Btu/(h.degF)'],
    'W/K',
    'Btu/(h.degF)',
    'W/K',
  ),
  velocity: kind('velocity', 'velocity', 'm/s', ['m/s', 'mm/s', 'km/h', 'ft/s', 'mph'], 'm/s', 'ft/s', 'm/s'),
  massFraction: kind('massFraction', 'mass fraction', '1', ['mg/kg', '%'], 'mg/kg'),
  massConcentration: kind('massConcentration', 'mass concentration', 'kg/m3', ['mg/L', 'kg/m3'], 'mg/L'),
  particleConcentration: kind('particleConcentration', 'particle count', '1/m3', ['1/mL', '1/m3'], '1/mL'),
  specificEnergy: kind(
    'specificEnergy',
    'specific energy',
    'J/kg',
    ['MJ/kg', 'kJ/kg', 'J/kg', 'kWh/kg', 'Btu/lb'],
    'MJ/kg',
    'Btu/lb',
    'MJ/kg',
  ),
  energyDensity: kind(
    'energyDensity',
    'energy per volume',
    'J/m3',
    ['MJ/L', 'GJ/m3', 'J/m3', 'kWh/L', 'Btu/gal'],
    'MJ/L',
    'Btu/gal',
    'MJ/L',
  ),
}

export function kindOf(id: KindId): Kind {
  return kinds[id]
}

/** Units understood in a field of this kind: those offered, and those that carry their own reference. */
export function understoodUnits(id: KindId): readonly string[] {
  const carriesReference = (unit: string) => units[unit]?.onlyKind !== undefined
  const pressure = id === 'gaugePressure' || id === 'absolutePressure'
  return pressure ? [...kinds[id].units, ...Object.keys(units).filter(carriesReference)] : kinds[id].units
}

/** Units of the US system; a person who asked for SI does not see them, though the data may be written in them. */
const customary = new Set([
  'in',
  'ft',
  'in2',
  'ft2',
  'gal',
  'impgal',
  'bbl',
  'lb',
  'degF',
  'mi',
  'mph',
  'lb/(hp.h)',
  'psi',
  'psig',
  'psia',
  'inHg',
  'inH2O',
  'ftH2O',
  'lb/ft3',
  'ft/s',
  'gal/min',
  'gal/h',
  'impgal/min',
  'impgal/h',
  'lb/h',
  'hp',
  'lbf.ft',
  '1/degF',
  'lbf',
  'lbf/in',
  'Btu/(lb.degF)',
  'Btu/(h.ft2.degF)',
  'Btu/(h.degF)',
  'Btu/lb',
  'Btu/gal',
  'g/(hp.h)',
])

/** Whether a unit belongs to the US system. */
export const isCustomary = (unit: string): boolean => customary.has(unit)

/**
 * Unit in which a quantity is shown to a person of this system: the one in which the data is written as long as
 * it belongs to that system ('500 h' stays hours, '6 mm' stays millimetres), otherwise the kind's preferred one.
 * @param kind kind of quantity [-]
 * @param system what the person asked for [-]
 * @param written unit id in which the data states it [-]
 */
export function unitForSystem(kind: KindId, system: UnitSystem, written?: string): string {
  const { preferred, units: offered } = kinds[kind]
  const preferredUnit = preferred[system]
  if (written === undefined || !offered.includes(written)) return preferredUnit
  const sameEverywhere = preferred.si === preferred.us
  const belongs = customary.has(written) === customary.has(preferredUnit)
  return sameEverywhere || belongs ? written : preferredUnit
}
