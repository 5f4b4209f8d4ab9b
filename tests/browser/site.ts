import { preview } from 'astro'
import {
  chromium,
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type Page,
} from 'playwright-core'
import { findChromium } from '../tools/chromium.mjs'

/** Which build is served, and under which folder of the address: the runner sets both. */
const SITE_DIRECTORY = process.env['SITE_DIRECTORY'] ?? 'dist'
const SITE_BASE = process.env['SITE_BASE'] ?? '/'

const SHOP_SCREEN = { width: 1366, height: 768 }

export interface OpenPage {
  readonly page: Page
  readonly context: BrowserContext
  /** What went wrong in the page: refused by the security policy, thrown, or asked of another host. */
  readonly faults: readonly string[]
}

export interface Site {
  /** Address of a page: `site.address('symptoms/')`. */
  address(path?: string): string
  /** A new page in a context of its own: see `context`. */
  open(path?: string, options?: BrowserContextOptions): Promise<OpenPage>
  /**
   * A new context, on a shop PC's screen and without a service worker unless told otherwise: keeping the whole site
   * for use offline would cost each context more than what it looks at.
   */
  context(options?: BrowserContextOptions): Promise<BrowserContext>
  /** A new page in a context that is there already. */
  openIn(context: BrowserContext, path?: string): Promise<OpenPage>
  close(): Promise<void>
}

function watch(page: Page, origin: string): string[] {
  const faults: string[] = []
  page.on('pageerror', (error) => faults.push(`thrown: ${error.message}`))
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()}`)
  })
  page.on('request', (request) => {
    const address = request.url()
    if (!address.startsWith(origin) && !/^(data|blob):/.test(address))
      faults.push(`foreign request: ${address}`)
  })
  return faults
}

/** Serves the built site, or that directory, on a free port and starts a browser. Close it at the end of the file's tests. */
export async function serveSite(directory = SITE_DIRECTORY): Promise<Site> {
  const server = await preview({
    root: process.cwd(),
    outDir: directory,
    base: SITE_BASE,
    server: { port: 0, host: '127.0.0.1' },
    logLevel: 'error',
  })
  const executablePath = findChromium()
  if (!executablePath) throw new Error('No Chromium found: run `npm test`, which installs it.')
  const browser: Browser = await chromium.launch({
    executablePath,
    args: ['--no-sandbox', '--disable-quic', '--disable-background-networking'],
  })
  const origin = `http://127.0.0.1:${server.port}`
  const address = (path = '') => origin + SITE_BASE + path
  const newContext = (options: BrowserContextOptions = {}) =>
    browser.newContext({
      viewport: SHOP_SCREEN,
      locale: 'en-GB',
      serviceWorkers: 'block',
      // Without a graphics card each frame of the moving flow costs more than what the test is about.
      reducedMotion: 'reduce',
      ...options,
    })
  async function openIn(context: BrowserContext, path = ''): Promise<OpenPage> {
    const page = await context.newPage()
    const faults = watch(page, origin)
    await page.goto(address(path))
    return { page, context, faults }
  }
  return {
    address,
    context: newContext,
    openIn,
    open: async (path, options) => openIn(await newContext(options), path),
    async close() {
      await browser.close()
      await server.stop()
    },
  }
}
