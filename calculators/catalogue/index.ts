import type { Calculator } from '../calculator/types.ts'

/** Every calculator by its id, loaded when asked for, so that a page carries only its own. */
export const catalogue: Readonly<Record<string, () => Promise<Calculator>>> = {
  'beta-ratio': () => import('./beta-ratio/index.ts').then((module) => module.default),
  'cleanliness-code': () => import('./cleanliness-code/index.ts').then((module) => module.default),
  'cold-margin': () => import('./cold-margin/index.ts').then((module) => module.default),
  'density-and-volume': () => import('./density-and-volume/index.ts').then((module) => module.default),
  'filter-pressure-drop': () => import('./filter-pressure-drop/index.ts').then((module) => module.default),
  'filter-target': () => import('./filter-target/index.ts').then((module) => module.default),
  'filters-in-parallel': () => import('./filters-in-parallel/index.ts').then((module) => module.default),
  'free-water': () => import('./free-water/index.ts').then((module) => module.default),
  'settling-time': () => import('./settling-time/index.ts').then((module) => module.default),
  'time-to-cool': () => import('./time-to-cool/index.ts').then((module) => module.default),
  'valve-set-point-check': () => import('./valve-set-point-check/index.ts').then((module) => module.default),
  'viscosity-at-temperature': () =>
    import('./viscosity-at-temperature/index.ts').then((module) => module.default),
}
