/** The three ways in which a person can ask for units. Mixed: SI with the trade's psi, inHg and US gallons. */
export type UnitSystem = 'si' | 'us' | 'mixed'

/**
 * A kind of quantity. Two kinds can share a dimension and yet not mix: a temperature is not a temperature
 * difference, and a gauge pressure is neither an absolute pressure nor a pressure difference.
 */
export type KindId =
  | 'ratio'
  | 'length'
  | 'distance'
  | 'area'
  | 'volume'
  | 'mass'
  | 'time'
  | 'temperature'
  | 'temperatureDifference'
  | 'gaugePressure'
  | 'absolutePressure'
  | 'pressureDifference'
  | 'density'
  | 'kinematicViscosity'
  | 'dynamicViscosity'
  | 'volumeFlow'
  | 'massFlow'
  | 'power'
  | 'travelSpeed'
  | 'specificConsumption'
  | 'rotationalSpeed'
  | 'torque'
  | 'volumeExpansion'
  | 'force'
  | 'springRate'
  | 'specificHeat'
  | 'heatTransferCoefficient'
  | 'thermalConductance'
  | 'velocity'
  | 'massFraction'
  | 'massConcentration'
  | 'particleConcentration'
  | 'specificEnergy'
  | 'energyDensity'

export interface Kind {
  readonly id: KindId
  /** In plain words, for messages: 'gauge pressure'. */
  readonly label: string
  /** Id of the SI unit in which calculators work. */
  readonly siUnit: string
  /** Ids of the units offered, the usual one first. */
  readonly units: readonly string[]
  /** The unit shown when the person has asked for that system. */
  readonly preferred: Readonly<Record<UnitSystem, string>>
}

export interface Unit {
  /** What a person types and what an address carries: 'mm2/s', 'degC', 'gal/min'. */
  readonly id: string
  /** What a page shows: 'mm²/s', '°C', 'US gal/min'. */
  readonly symbol: string
  /** Other spellings that are understood. */
  readonly alsoTyped: readonly string[]
  /** Value in SI = factor × value + offset. */
  readonly factor: number
  readonly offset: number
  /** SI unit that the factor leads to. */
  readonly siUnit: string
  /** Set on units that carry their own reference: 'psig' is only a gauge pressure, 'psia' only an absolute one. */
  readonly onlyKind?: KindId
}

/** What was read from a typed text. */
export type QuantityReading =
  | {
      readonly ok: true
      /** Value in the kind's SI unit. */
      readonly si: number
      /** The unit the person wrote, or the field's unit when none was written. */
      readonly unit: string
      /** What was understood, to be shown: '45 psi = 310.3 kPa'. Empty for a plain number. */
      readonly understood: string
    }
  | { readonly ok: false; readonly reason: string; readonly accepted: string }
