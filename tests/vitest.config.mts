import { defineConfig } from 'vitest/config'

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
    // What a test waits for comes in tenths of a second; on a machine with other work it takes several.
    expect: { poll: { timeout: 20_000 } },
    // One browser a file is heavy: two files at a time suit two cores.
    maxWorkers: 2,
    // Pages that one file looks at at the same time.
    maxConcurrency: 3,
  },
})
