import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join, sep } from 'node:path'

export interface OutputPage {
  /** Address below the site's root, such as '/circuit/the-circuit/'. */
  path: string
  html: string
}

/** Every HTML page of a built site, Pagefind's own folder left out. */
export function outputPages(folder: string): OutputPage[] {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  return names
    .filter((name) => name.endsWith('.html') && !name.startsWith(`pagefind${sep}`))
    .filter((name) => statSync(join(folder, name)).isFile())
    .map((name) => ({ path: addressOf(name), html: readFileSync(join(folder, name), 'utf8') }))
    .sort((a, b) => a.path.localeCompare(b.path))
}

function addressOf(name: string): string {
  return `/${name.split(sep).join('/')}`.replace(/index\.html$/, '')
}
