import type { Calculator } from '../calculator/types.ts'

/** Every calculator by its id, loaded when asked for, so that a page carries only its own. */
export const catalogue: Readonly<Record<string, () => Promise<Calculator>>> = {
  'beta-ratio': () => import('./beta-ratio/index.ts').then((module) => module.default),
  'cleanliness-code': () => import('./cleanliness-code/index.ts').then((module) => module.default),
  'cold-margin': () => import('./cold-margin/index.ts').then((module) => module.default),
  'calculated-cetane-index': () =>
    import('./calculated-cetane-index/index.ts').then((module) => module.default),
  'carbon-aromaticity-index': () =>
    import('./carbon-aromaticity-index/index.ts').then((module) => module.default),
  'density-and-volume': () => import('./density-and-volume/index.ts').then((module) => module.default),
  'energy-content': () => import('./energy-content/index.ts').then((module) => module.default),
  'filter-pressure-drop': () => import('./filter-pressure-drop/index.ts').then((module) => module.default),
  'fuel-in-oil-by-flash-point': () =>
    import('./fuel-in-oil-by-flash-point/index.ts').then((module) => module.default),
  'fuel-in-oil-by-viscosity': () =>
    import('./fuel-in-oil-by-viscosity/index.ts').then((module) => module.default),
  'kinematic-and-dynamic-viscosity': () =>
    import('./kinematic-and-dynamic-viscosity/index.ts').then((module) => module.default),
  'mass-from-metered-volume': () =>
    import('./mass-from-metered-volume/index.ts').then((module) => module.default),
  'temperature-for-viscosity': () =>
    import('./temperature-for-viscosity/index.ts').then((module) => module.default),
  'heater-duty': () => import('./heater-duty/index.ts').then((module) => module.default),
  'injector-cooling': () => import('./injector-cooling/index.ts').then((module) => module.default),
  'orifice-flow': () => import('./orifice-flow/index.ts').then((module) => module.default),
  'return-and-recirculation': () =>
    import('./return-and-recirculation/index.ts').then((module) => module.default),
  'spring-shim': () => import('./spring-shim/index.ts').then((module) => module.default),
  'spring-valve': () => import('./spring-valve/index.ts').then((module) => module.default),
  'tank-temperature': () => import('./tank-temperature/index.ts').then((module) => module.default),
  'valve-coefficient': () => import('./valve-coefficient/index.ts').then((module) => module.default),
  'filter-target': () => import('./filter-target/index.ts').then((module) => module.default),
  'filters-in-parallel': () => import('./filters-in-parallel/index.ts').then((module) => module.default),
  'free-water': () => import('./free-water/index.ts').then((module) => module.default),
  'settling-time': () => import('./settling-time/index.ts').then((module) => module.default),
  'time-to-cool': () => import('./time-to-cool/index.ts').then((module) => module.default),
  'power-at-fixed-rack': () => import('./power-at-fixed-rack/index.ts').then((module) => module.default),
  'specific-consumption': () => import('./specific-consumption/index.ts').then((module) => module.default),
  'valve-set-point-check': () => import('./valve-set-point-check/index.ts').then((module) => module.default),
  'viscosity-at-temperature': () =>
    import('./viscosity-at-temperature/index.ts').then((module) => module.default),
  'exhaust-before-and-after': () =>
    import('./exhaust-before-and-after/index.ts').then((module) => module.default),
  'exhaust-spread': () => import('./exhaust-spread/index.ts').then((module) => module.default),
  'filter-life': () => import('./filter-life/index.ts').then((module) => module.default),
  'fuel-rate': () => import('./fuel-rate/index.ts').then((module) => module.default),
  'injection-quantity': () => import('./injection-quantity/index.ts').then((module) => module.default),
  'injector-bench-test': () => import('./injector-bench-test/index.ts').then((module) => module.default),
  'range-and-hours': () => import('./range-and-hours/index.ts').then((module) => module.default),
  'reading-trend': () => import('./reading-trend/index.ts').then((module) => module.default),
  'real-difference': () => import('./real-difference/index.ts').then((module) => module.default),
  'viscosity-of-blend': () => import('./viscosity-of-blend/index.ts').then((module) => module.default),
  'viscosity-scales': () => import('./viscosity-scales/index.ts').then((module) => module.default),
  'air-drawn-in': () => import('./air-drawn-in/index.ts').then((module) => module.default),
  'dissolved-air': () => import('./dissolved-air/index.ts').then((module) => module.default),
  'dye-dose': () => import('./dye-dose/index.ts').then((module) => module.default),
  'leak-rate': () => import('./leak-rate/index.ts').then((module) => module.default),
  'line-pressure-drop': () => import('./line-pressure-drop/index.ts').then((module) => module.default),
  'pump-delivery': () => import('./pump-delivery/index.ts').then((module) => module.default),
  'pump-motor-power': () => import('./pump-motor-power/index.ts').then((module) => module.default),
  'pump-wear': () => import('./pump-wear/index.ts').then((module) => module.default),
  'suction-limits': () => import('./suction-limits/index.ts').then((module) => module.default),
  'suction-line': () => import('./suction-line/index.ts').then((module) => module.default),
}
