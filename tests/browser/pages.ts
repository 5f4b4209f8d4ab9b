import { globSync } from 'node:fs'

const SITE_DIRECTORY = process.env['SITE_DIRECTORY'] ?? 'dist'

/** Paths of all built pages, relative to the site's base: '' is the start page. */
export function builtPages(): string[] {
  return globSync('**/index.html', { cwd: SITE_DIRECTORY })
    .map((file) => file.replaceAll('\\', '/').replace(/index\.html$/, ''))
    .sort()
}

/** One page of each kind: the first of each folder, and each page that stands alone. */
export function onePageOfEachKind(): string[] {
  const byKind = new Map<string, string>()
  for (const path of builtPages()) {
    const [folder = '', id = ''] = path.split('/')
    const kind = id === '' ? path : `${folder}/*`
    if (!byKind.has(kind)) byKind.set(kind, path)
  }
  return [...byKind.values()]
}
