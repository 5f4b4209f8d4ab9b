import type { KindId } from '../quantity/types.ts'

/** One figure of a part: what the circuit's data gives, or what only a fault changes. */
export interface Parameter {
  readonly kind: KindId
  readonly label: string
  /** Physically possible, in SI. */
  readonly minimum: number
  readonly maximum: number
  /** Value where the data gives none, in SI; a parameter without it must be given. */
  readonly otherwise?: number
  /** Each cylinder has its own. */
  readonly eachCylinder?: true
}

export interface PartKind {
  readonly title: string
  /** Its law in words, shown beside a part on the bench. */
  readonly law: string
  readonly parameters: Readonly<Record<string, Parameter>>
}

const given = (kind: KindId, label: string, minimum: number, maximum: number): Parameter => ({
  kind,
  label,
  minimum,
  maximum,
})
const usually = (
  kind: KindId,
  label: string,
  minimum: number,
  maximum: number,
  otherwise: number,
): Parameter => ({ kind, label, minimum, maximum, otherwise })

const airHole = usually('length', 'Hole through which air or fuel passes the wall', 0, 0.01, 0)
const opening = usually('ratio', 'Share of the bore that is free', 1e-4, 1, 1)
const forCylinder = (parameter: Parameter): Parameter => ({ ...parameter, eachCylinder: true })

/** A drop that was measured at one flow and one viscosity. */
const measuredDrop = {
  cleanDrop: given('pressureDifference', 'Drop at the reference flow and viscosity', 1, 1e6),
  flow: given('volumeFlow', 'Reference flow', 1e-7, 0.1),
  viscosity: given('kinematicViscosity', 'Reference viscosity', 1e-7, 1e-3),
  inertialShare: usually('ratio', 'Share of that drop that goes with the square of the flow', 0, 1, 0.1),
}

const pumpFigures = {
  displacement: given('volume', 'Displacement a turn', 1e-9, 1e-2),
  slip: given('ratio', 'Slip at its reference pressure and viscosity, share of the displaced flow', 0, 0.5),
  slipPressure: given('pressureDifference', 'Pressure at which the slip is stated', 1e3, 1e7),
  slipViscosity: given('kinematicViscosity', 'Viscosity at which the slip is stated', 1e-7, 1e-3),
  efficiency: usually('ratio', 'Hydraulic over shaft power', 0.05, 1, 0.6),
  wear: usually('ratio', 'Slip constant over that of a new pump', 0.1, 200, 1),
  speedShare: usually('ratio', 'Speed over the speed it should have', 0, 1.2, 1),
  airHole,
}

const heaterFigures = {
  conductance: given('thermalConductance', 'Heat passed for each kelvin between medium and fuel', 1, 1e5),
  mediumTemperature: given('temperature', 'Temperature of the heating medium', 273.15, 573.15),
  ...measuredDrop,
  conductanceShare: usually('ratio', 'Conductance over that of a clean heater in service', 0, 1, 1),
  heldOn: usually('ratio', 'Share by which the control is held open', 0, 1, 0),
  /** 1 a liquid that flows on whether it is warmer than the fuel or not; 0 steam, which then does not condense, or a rod. */
  coolsToo: usually('ratio', 'A medium colder than the fuel cools it: 1, else 0', 0, 1, 0),
}

/**
 * What a part of a circuit can be. A parameter of the data is a figure ('450 kPa') or the id of a set point of the
 * plant; one with `otherwise` may be left out, and most of these are what faults bend.
 */
export const partKinds = {
  tank: {
    title: 'Tank',
    law: 'Its surface carries the pressure of the air; the vent lets in what leaves as fuel.',
    parameters: {
      depth: given('length', 'Depth of fuel when full', 0.05, 20),
      volume: given('volume', 'Usable volume', 1e-3, 1e4),
      mouth: given('length', 'Mouth of the suction pipe above the floor', 0, 5),
      ventBore: given('length', 'Bore of the vent', 1e-3, 0.5),
      ventOpen: usually('ratio', 'Share of the vent that is free', 0, 1, 1),
      churnedAir: usually('ratio', 'Air carried down as bubbles, share of the volume drawn', 0, 0.5, 0),
    },
  },
  filter: {
    title: 'Filter',
    law: 'Drop = element × dynamic viscosity × flow + housing × density × flow².',
    parameters: {
      ...measuredDrop,
      elements: usually('ratio', 'Elements side by side', 1, 8, 1),
      opening: usually('length', 'Opening of the mesh', 1e-6, 1e-2, 1e-5),
      loading: usually('ratio', 'Resistance of the elements over that of clean ones', 0.05, 5000, 1),
      shutElements: usually('ratio', 'Elements that pass nothing', 0, 8, 0),
      leakPast: usually('length', 'Hole past the elements', 0, 0.05, 0),
      airHole,
    },
  },
  'motor-pump': {
    title: 'Pump driven by its own motor',
    law: 'Flow = displacement × speed × liquid share − slip; slip ∝ pressure ÷ dynamic viscosity.',
    parameters: {
      ...pumpFigures,
      speed: given('rotationalSpeed', 'Speed', 1, 1000),
      motorRating: given('power', 'Rated output of the motor', 1, 1e6),
      /** 0 runs in every state; 1 only while priming (a hand or electric priming pump). */
      primingOnly: usually('ratio', 'Runs only while priming: 1, else 0', 0, 1, 0),
    },
  },
  'engine-pump': {
    title: 'Pump driven by the engine',
    law: 'Flow = displacement × speed × liquid share − slip; it stands when the engine stands.',
    parameters: {
      ...pumpFigures,
      speedRatio: given('ratio', 'Pump turns for one turn of the engine', 0.05, 20),
    },
  },
  'spring-valve': {
    title: 'Spring valve',
    law: 'Shut to its cracking pressure, then pressure rises in proportion to flow; back pressure adds one to one.',
    parameters: {
      cracking: given('gaugePressure', 'Cracking pressure', 1e3, 5e6),
      fullFlowPressure: given('gaugePressure', 'Pressure at full flow', 1e3, 6e6),
      fullFlow: given('volumeFlow', 'Full flow', 1e-7, 0.1),
      bore: given('length', 'Bore of the seat', 1e-3, 0.2),
      seatLeak: usually('ratio', 'Leakage of the seat at cracking, share of full flow', 1e-6, 1, 5e-4),
      springShare: usually('ratio', 'Spring force over what it should be', 0.02, 3, 1),
      heldOpen: usually('ratio', 'Share of the seat held open', 0, 1, 0),
      heldShut: usually('ratio', 'Share of its lift that it cannot make', 0, 1, 0),
    },
  },
  'thermostat-heater': {
    title: 'Heater with a thermostat',
    law: 'Effectiveness 1 − e^(−N), held back by the control so that the fuel does not pass its set point.',
    parameters: {
      ...heaterFigures,
      setPoint: given('temperature', 'Set point', 250, 500),
    },
  },
  'viscosity-heater': {
    title: 'Heater with viscosity control',
    law: 'Effectiveness 1 − e^(−N), held back by the control so that the fuel does not get thinner than its set point.',
    parameters: {
      ...heaterFigures,
      viscositySetPoint: given('kinematicViscosity', 'Set point', 1e-6, 1e-4),
      sensorShare: usually('ratio', 'Viscosity that the sensor reads over the true one', 0.1, 10, 1),
    },
  },
  injectors: {
    title: 'Injectors or injection pumps',
    law: 'Inlet strainer, through-flow and return filter in series, each cylinder its own; what is injected leaves.',
    parameters: {
      throughFlow: given('volumeFlow', 'Through-flow of all at which the drops are stated', 1e-7, 0.1),
      viscosity: given('kinematicViscosity', 'Viscosity at which the drops are stated', 1e-7, 1e-3),
      inletStrainerDrop: given('pressureDifference', 'Drop of the inlet strainer', 1, 1e6),
      throughDrop: given('pressureDifference', 'Drop of the passage through the injector', 1, 1e6),
      returnFilterDrop: given('pressureDifference', 'Drop of the return filter', 1, 1e6),
      heatAtFull: given('power', 'Heat that the fuel picks up from all at full load', 0, 1e6),
      heatAtIdle: given('power', 'Heat that the fuel picks up from all at idle', 0, 1e6),
      inletLoading: forCylinder(usually('ratio', 'Inlet strainer over a clean one', 0.1, 1e5, 1)),
      returnLoading: forCylinder(usually('ratio', 'Return filter over a clean one', 0.1, 1e5, 1)),
      gasHole: forCylinder(usually('length', 'Hole by which combustion gas comes in', 0, 0.002, 0)),
      plungerLeak: forCylinder(usually('ratio', 'Share of the metered fuel that leaks back', 0, 0.9, 0)),
      drip: forCylinder(
        usually('ratio', 'Fuel that the nozzle adds unasked, share of full delivery', 0, 0.5, 0),
      ),
    },
  },
  header: {
    title: 'Header',
    law: 'A wide pipe with a branch to every injector.',
    parameters: {
      bore: given('length', 'Bore', 1e-3, 0.5),
      length: given('length', 'Length', 0.1, 100),
      branchLosses: usually('ratio', 'Loss coefficient of a branch', 0, 50, 1.5),
      opening,
      airHole,
    },
  },
  glass: {
    title: 'Sight glass',
    law: 'Shows what passes: bubbles by their share of the volume, emptiness by how little fuel comes.',
    parameters: {
      bore: given('length', 'Bore of the glass', 5e-3, 0.2),
      dirt: usually('ratio', 'Share of the view that dirt takes', 0, 1, 0),
      hottest: usually('temperature', 'Highest temperature of the fuel in it', 273.15, 773.15, 773.15),
      airHole,
    },
  },
  line: {
    title: 'Line',
    law: 'Drop = (friction factor × length ÷ bore + losses) × density × velocity² ÷ 2, and the height.',
    parameters: {
      length: given('length', 'Length', 0.01, 1000),
      bore: given('length', 'Bore', 1e-3, 0.5),
      losses: usually('ratio', 'Loss coefficients of bends and fittings', 0, 200, 0),
      opening,
      airHole,
    },
  },
  'check-valve': {
    title: 'Check valve',
    law: 'Passes one way; backward only what its seat lets by.',
    parameters: {
      bore: given('length', 'Bore', 1e-3, 0.2),
      cracking: usually('pressureDifference', 'Difference that lifts it', 0, 1e5, 2e3),
      leakBack: usually('length', 'Hole past its seat', 0, 0.05, 0),
    },
  },
  'stop-valve': {
    title: 'Stop valve',
    law: 'Wide open it costs little; nearly shut it is a small opening.',
    parameters: {
      bore: given('length', 'Bore', 1e-3, 0.2),
      opening: usually('ratio', 'Share of the bore that is free', 0, 1, 1),
    },
  },
  'mixing-column': {
    title: 'Mixing column',
    law: 'New and returning fuel meet and take one temperature; gas gathers at its top.',
    parameters: {
      volume: given('volume', 'Volume', 1e-4, 10),
      vented: usually('ratio', 'Share of the gas that its vent lets go', 0, 1, 1),
    },
  },
  'pressure-gauge': {
    title: 'Pressure gauge',
    law: 'Reads against the air outside, less the fuel column between tapping and gauge.',
    parameters: {
      range: given('pressureDifference', 'Largest reading', 1e3, 1e7),
      accuracy: given('pressureDifference', 'Accuracy', 1, 1e6),
      error: usually('pressureDifference', 'Error', -1e6, 1e6, 0),
    },
  },
  'vacuum-gauge': {
    title: 'Vacuum gauge',
    law: 'Reads how far the pressure lies below that of the air outside.',
    parameters: {
      range: given('pressureDifference', 'Largest reading', 1e3, 1.1e5),
      accuracy: given('pressureDifference', 'Accuracy', 1, 1e5),
      error: usually('pressureDifference', 'Error', -1e5, 1e5, 0),
    },
  },
  'drop-gauge': {
    title: 'Differential gauge',
    law: 'Reads the pressure before a part less the pressure behind it.',
    parameters: {
      range: given('pressureDifference', 'Largest reading', 1e3, 1e7),
      accuracy: given('pressureDifference', 'Accuracy', 1, 1e6),
      error: usually('pressureDifference', 'Error', -1e6, 1e6, 0),
    },
  },
  thermometer: {
    title: 'Thermometer',
    law: 'Reads the temperature of the fuel that passes.',
    parameters: {
      accuracy: given('temperatureDifference', 'Accuracy', 0.01, 20),
      error: usually('temperatureDifference', 'Error', -50, 50, 0),
    },
  },
  viscometer: {
    title: 'Viscosity sensor',
    law: 'Reads the kinematic viscosity of the fuel that passes.',
    parameters: { accuracy: given('ratio', 'Accuracy, share of the reading', 0.001, 0.5) },
  },
  motor: { title: 'Motor', law: 'Turns the pump at one speed.', parameters: {} },
} as const satisfies Record<string, PartKind>

export type PartKindId = keyof typeof partKinds
