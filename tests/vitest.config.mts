import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: '.',
    include: ['tests/**/*.test.{ts,tsx}'],
    // Dates and number formats must not depend on the machine.
    env: { TZ: 'UTC', LC_ALL: 'C' },
    testTimeout: 30_000,
    hookTimeout: 60_000,
    // One browser a file is heavy: two files at a time suit two cores.
    maxWorkers: 2,
  },
})
