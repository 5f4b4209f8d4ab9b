import type { Inputs } from '../../calculator/types.ts'
import { density15, flowOf, temperatureOf } from '../common-inputs.ts'

const whenExchanger = { input: 'form', oneOf: ['counterflow', 'parallel', 'constant'] } as const

export const inputs = {
  form: {
    type: 'choice',
    label: 'Heater',
    help: 'A wanted temperature asks for a duty; a given heater gives a temperature.',
    options: [
      { value: 'wanted', label: 'Any: the outlet temperature is wanted' },
      { value: 'electric', label: 'Electric, of a known power' },
      { value: 'counterflow', label: 'Engine water, counterflow' },
      { value: 'parallel', label: 'Engine water, parallel flow' },
      { value: 'constant', label: 'Steam, or so much water that it does not cool' },
    ],
    default: 'counterflow',
  },
  flow: flowOf('Fuel flow', 'Q', 'At the inlet temperature.', 4.5e-4),
  inlet: temperatureOf('Fuel at the inlet', 'T₁', 'Before the heater.', 283.15),
  wanted: {
    ...temperatureOf('Wanted at the outlet', 'T₂', 'Behind the heater.', 308.15),
    when: { input: 'form', oneOf: ['wanted'] },
  },
  power: {
    type: 'quantity',
    label: 'Power of the heater',
    symbol: 'P',
    help: 'What reaches the fuel: nameplate power, at the voltage that it gets.',
    kind: 'power',
    physical: { minimum: 0, maximum: 1e7 },
    default: 9000,
    accuracy: { relative: 0.05 },
    when: { input: 'form', oneOf: ['electric'] },
  },
  hotInlet: {
    ...temperatureOf('Hot side at its inlet', 'T_h', 'Water or steam as it comes to the heater.', 353.15),
    when: whenExchanger,
  },
  hotCapacity: {
    type: 'quantity',
    label: 'Capacity rate of the hot side',
    symbol: 'C_h',
    help: 'Its mass flow times its specific heat: each L/min of water is about 68 W/K (4.1 kJ/(kg·K), from memory).',
    kind: 'thermalConductance',
    physical: { minimum: 0.01, maximum: 1e8 },
    default: 1400,
    accuracy: { relative: 0.1 },
    when: { input: 'form', oneOf: ['counterflow', 'parallel'] },
  },
  conductance: {
    type: 'quantity',
    label: 'Conductance of the heater',
    symbol: 'U A',
    help: 'From its data sheet, or found by trying until a measured outlet comes out. Dirt lowers it, cold thick fuel too.',
    kind: 'thermalConductance',
    physical: { minimum: 0.01, maximum: 1e8 },
    default: 400,
    accuracy: { relative: 0.2 },
    when: whenExchanger,
  },
  density15,
} as const satisfies Inputs
