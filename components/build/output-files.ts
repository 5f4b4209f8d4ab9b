import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join, posix } from 'node:path'
import { gzipSync } from 'node:zlib'

/** Names of Preact's own fields, which stay as they are in every build. */
const frameworkMark = /\b__k\b/

/** The files of a built site by their address on the host, each read and compressed once. */
export class OutputFiles {
  private readonly texts = new Map<string, string>()
  private readonly sizes = new Map<string, number>()
  private readonly folder: string
  private readonly base: string

  /** @param base the folder of the host that the site is built for */
  constructor(folder: string, base: string) {
    this.folder = folder
    this.base = base.endsWith('/') ? base : `${base}/`
  }

  /** Compressed bytes of files, each counted once. */
  size(addresses: string[]): number {
    return [...new Set(addresses)].reduce((sum, address) => sum + this.sizeOf(address), 0)
  }

  /** Scripts and all that they import before they run. */
  withImports(addresses: string[]): string[] {
    const found = new Set<string>()
    const visit = (address: string): void => {
      if (found.has(address) || this.text(address) === '') return
      found.add(address)
      for (const next of this.links(address, /(?:^|[;}\s])(?:import|export)\b[^'"();]*?["'](\.[^"']+)["']/g))
        visit(next)
    }
    for (const address of addresses) visit(address)
    return [...found]
  }

  /** What scripts fetch once it is needed. */
  fetchedLaterBy(addresses: string[]): string[] {
    return addresses.flatMap((address) => this.links(address, /\bimport\(\s*["'`](\.[^"'`]+)["'`]/g))
  }

  /** Scripts whose file names begin with these, as those of the calculators do; a worker's mark follows a hyphen. */
  named(names: string[]): string[] {
    if (names.length === 0) return []
    const assets = join(this.folder, '_astro')
    return readdirSync(assets)
      .filter((file) => file.endsWith('.js') && names.includes(file.replace(/(\..*|-[\w-]{8}\.js)$/, '')))
      .map((file) => `${this.base}_astro/${file}`)
  }

  isFramework(address: string): boolean {
    return frameworkMark.test(this.text(address))
  }

  private links(address: string, pattern: RegExp): string[] {
    return [...this.text(address).matchAll(pattern)].map((match) =>
      posix.join(posix.dirname(address), match[1] ?? ''),
    )
  }

  private text(address: string): string {
    let text = this.texts.get(address)
    if (text === undefined) {
      const path = address.startsWith(this.base) ? address.slice(this.base.length) : address
      const file = join(this.folder, path)
      text = existsSync(file) ? readFileSync(file, 'utf8') : ''
      this.texts.set(address, text)
    }
    return text
  }

  private sizeOf(address: string): number {
    let size = this.sizes.get(address)
    if (size === undefined) {
      const text = this.text(address)
      size = text === '' ? 0 : gzipSync(text).length
      this.sizes.set(address, size)
    }
    return size
  }
}
