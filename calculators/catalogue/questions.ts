/** A question that a person comes with, and the calculators that answer it. */
export interface Question {
  readonly id: string
  readonly title: string
  /** Ids of calculators, the one most often needed first. */
  readonly calculators: readonly string[]
}

/** Every calculator stands under one question, so that nobody has to know the formula to find the sum. */
export const questions: readonly Question[] = [
  {
    id: 'viscosity',
    title: 'How thick is the fuel?',
    calculators: [
      'viscosity-at-temperature',
      'temperature-for-viscosity',
      'kinematic-and-dynamic-viscosity',
      'viscosity-scales',
      'viscosity-of-blend',
    ],
  },
  {
    id: 'quantity-and-energy',
    title: 'How much fuel is it, and what is in it?',
    calculators: [
      'density-and-volume',
      'mass-from-metered-volume',
      'energy-content',
      'power-at-fixed-rack',
      'calculated-cetane-index',
      'carbon-aromaticity-index',
    ],
  },
  {
    id: 'filters',
    title: 'Is the filter loaded?',
    calculators: [
      'filter-pressure-drop',
      'filter-life',
      'filters-in-parallel',
      'beta-ratio',
      'filter-target',
    ],
  },
  {
    id: 'valves',
    title: 'Is the valve right, and what passes it?',
    calculators: [
      'valve-set-point-check',
      'spring-valve',
      'spring-shim',
      'valve-coefficient',
      'orifice-flow',
    ],
  },
  {
    id: 'suction-and-air',
    title: 'Will the pump get its fuel without air?',
    calculators: ['suction-line', 'suction-limits', 'dissolved-air', 'air-drawn-in'],
  },
  {
    id: 'lines-and-pump',
    title: 'What do the line and the pump give?',
    calculators: ['line-pressure-drop', 'pump-delivery', 'pump-wear', 'pump-motor-power'],
  },
  {
    id: 'leaks',
    title: 'Does it leak, and how much?',
    calculators: ['leak-rate', 'dye-dose'],
  },
  {
    id: 'heat',
    title: 'Where does the heat go?',
    calculators: ['heater-duty', 'injector-cooling', 'return-and-recirculation', 'tank-temperature'],
  },
  {
    id: 'cold',
    title: 'Will it flow in the cold?',
    calculators: ['cold-margin', 'time-to-cool'],
  },
  {
    id: 'clean-and-dry',
    title: 'Is it clean and dry?',
    calculators: ['cleanliness-code', 'free-water', 'settling-time'],
  },
  {
    id: 'injectors-and-exhaust',
    title: 'Which cylinder is it, and is the injector good?',
    calculators: ['exhaust-spread', 'exhaust-before-and-after', 'injector-bench-test', 'injection-quantity'],
  },
  {
    id: 'consumption',
    title: 'How much is burnt, and how far does it go?',
    calculators: ['fuel-rate', 'specific-consumption', 'range-and-hours'],
  },
  {
    id: 'fuel-in-oil',
    title: 'Is there fuel in the oil?',
    calculators: ['fuel-in-oil-by-viscosity', 'fuel-in-oil-by-flash-point'],
  },
  {
    id: 'readings',
    title: 'Has something changed, or is it chance?',
    calculators: ['reading-trend', 'real-difference'],
  },
]
