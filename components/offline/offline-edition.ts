import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
import { generateSW } from 'workbox-build'

/** A whole edition must stay small enough that a phone keeps it; on the way there it is a fifth of this. */
const PRECACHE_BUDGET_BYTES = 20_000_000

/**
 * Makes the service worker that keeps the whole built site as one edition for reading offline.
 * It has to come last among the integrations: what is written after it is not kept.
 */
export function offlineEdition(): AstroIntegration {
  return {
    name: 'offline-edition',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const directory = fileURLToPath(dir)
        const { count, size, warnings } = await generateSW({
          globDirectory: directory,
          globPatterns: ['**/*'],
          globIgnores: ['sw.js', '_headers', 'screenshots/**'],
          swDest: join(directory, 'sw.js'),
          // An address that carries the state of a calculator is still the same page.
          ignoreURLParametersMatching: [/.*/],
          // Files that Astro names by their content need no second mark.
          dontCacheBustURLsMatching: /\/_astro\//,
          // A new edition waits until the person asks for it: nothing is swapped during work.
          skipWaiting: false,
          cleanupOutdatedCaches: true,
          inlineWorkboxRuntime: true,
          sourcemap: false,
          mode: 'production',
        })
        for (const warning of warnings) logger.warn(warning)
        if (size > PRECACHE_BUDGET_BYTES) {
          throw new Error(`The offline edition is ${size} bytes; allowed: ${PRECACHE_BUDGET_BYTES}.`)
        }
        logger.info(`offline edition: ${count} files, ${(size / 1e6).toFixed(2)} MB`)
      },
    },
  }
}
