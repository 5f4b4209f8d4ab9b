import type { Calculator } from '../calculator/types.ts'

/** Every calculator by its id, loaded when asked for, so that a page carries only its own. */
export const catalogue: Readonly<Record<string, () => Promise<Calculator>>> = {
  'calculated-cetane-index': () =>
    import('./calculated-cetane-index/index.ts').then((module) => module.default),
  'carbon-aromaticity-index': () =>
    import('./carbon-aromaticity-index/index.ts').then((module) => module.default),
  'density-and-volume': () => import('./density-and-volume/index.ts').then((module) => module.default),
  'energy-content': () => import('./energy-content/index.ts').then((module) => module.default),
  'filter-pressure-drop': () => import('./filter-pressure-drop/index.ts').then((module) => module.default),
  'power-at-fixed-rack': () => import('./power-at-fixed-rack/index.ts').then((module) => module.default),
  'specific-consumption': () => import('./specific-consumption/index.ts').then((module) => module.default),
  'valve-set-point-check': () => import('./valve-set-point-check/index.ts').then((module) => module.default),
  'viscosity-at-temperature': () =>
    import('./viscosity-at-temperature/index.ts').then((module) => module.default),
}
