import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

/**
 * Short files that take long. On a fresh clone Vitest begins with the largest files, and one core would wait at the
 * end for these.
 */
const LONG =
  /\/(accessibility|links|offline|catalogue|cli|faults|every-fault|replay|safety|circuit)\.test\.ts$/

class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files)
    const isLong = ({ moduleId }: TestSpecification) => LONG.test(moduleId)
    return [...sorted.filter(isLong), ...sorted.filter((file) => !isLong(file))]
  }
}

export default defineConfig({
  test: {
    root: '.',
    include: ['tests/**/*.test.{ts,tsx}'],
    // Dates and number formats must not depend on the machine.
    env: { TZ: 'UTC', LC_ALL: 'C' },
    // The files of a worker share what they import: reading it anew for each took a third of the time of all checks.
    isolate: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    sequence: { sequencer: LongFirst },
    // What a test waits for comes in tenths of a second; on a machine with other work it takes several.
    expect: { poll: { timeout: 20_000 } },
    // One browser a file is heavy: two files at a time suit two cores.
    maxWorkers: 2,
    // Pages that one file looks at at the same time.
    maxConcurrency: 3,
  },
})
