import * as fc from 'fast-check'
import { afterAll, beforeAll } from 'vitest'

/**
 * How the laws of this file draw their cases. Put back at its end, since the files of a worker share their modules.
 */
export function drawWith(parameters: fc.GlobalParameters): void {
  beforeAll(() => fc.configureGlobal(parameters))
  afterAll(() => fc.resetConfigureGlobal())
}
