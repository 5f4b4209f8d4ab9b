import { preview } from 'astro'
import { chromium, type Page } from 'playwright-core'
import { findChromium } from '../tools/chromium.mjs'

/** One frame of a screen that shows sixty a second. */
export const FRAME_MS = 1000 / 60

/** The time that a share of them does not exceed. */
export const quantile = (times: readonly number[], share: number): number =>
  times.toSorted((a, b) => a - b)[Math.floor(times.length * share)] ?? Number.NaN

export const median = (times: readonly number[]): number => quantile(times, 0.5)

/**
 * Serves the built site and hands a page on a shop PC's screen to what measures there.
 * @param measure gets the page and the site's address, without a slash at its end
 * @returns what was measured, and the browser's version
 */
export async function onBuiltSite<Result>(
  measure: (page: Page, address: string) => Promise<Result>,
): Promise<{ readonly result: Result; readonly version: string }> {
  const server = await preview({
    root: process.cwd(),
    outDir: process.env['SITE_DIRECTORY'] ?? 'dist',
    server: { port: 0, host: '127.0.0.1' },
    logLevel: 'error',
  })
  const browser = await chromium.launch({
    executablePath: findChromium() ?? '',
    args: ['--no-sandbox', '--disable-quic', '--disable-background-networking'],
  })
  try {
    const page = await browser.newPage({
      viewport: { width: 1366, height: 768 },
      serviceWorkers: 'block',
      // Without a graphics card each frame of the moving flow costs more than what is measured.
      reducedMotion: 'reduce',
    })
    return {
      result: await measure(page, `http://127.0.0.1:${server.port}`),
      version: browser.version(),
    }
  } finally {
    await browser.close()
    await server.stop()
  }
}
