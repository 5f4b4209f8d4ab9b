import type { KindId } from '../../calculators/quantity/types.ts'

/** What people mix up about a kind, in a sentence or two, and the kind that they may have meant. */
export interface KindNote {
  readonly text: string
  readonly instead: readonly KindId[]
}

const pressure =
  'A gauge shows pressure above the air around it; absolute pressure counts from nothing; a difference is between two points of a circuit.'

export const kindNotes: Readonly<Partial<Record<KindId, KindNote>>> = {
  temperature: {
    text: 'A reading of a thermometer: the scales have their zeros in different places. Ten degrees warmer is a temperature difference, and converts without the 32.',
    instead: ['temperatureDifference'],
  },
  temperatureDifference: {
    text: 'How much warmer one thing is than another: 5 K is 5 °C is 9 °F. The reading of a thermometer is a temperature, and converts with the 32.',
    instead: ['temperature'],
  },
  gaugePressure: {
    text: `${pressure} A vacuum is a gauge pressure below zero.`,
    instead: ['absolutePressure', 'pressureDifference'],
  },
  absolutePressure: { text: pressure, instead: ['gaugePressure', 'pressureDifference'] },
  pressureDifference: { text: pressure, instead: ['gaugePressure', 'absolutePressure'] },
  kinematicViscosity: {
    text: 'How fast a liquid runs out of a tube under its own weight. Times density it is the dynamic viscosity.',
    instead: ['dynamicViscosity'],
  },
  dynamicViscosity: {
    text: 'How hard a liquid is to shear. Divided by density it is the kinematic viscosity, which certificates give.',
    instead: ['kinematicViscosity'],
  },
  volume: {
    text: 'A US gallon is about five sixths of an imperial one. The barrel here is the oil barrel of 42 US gallons.',
    instead: [],
  },
}
