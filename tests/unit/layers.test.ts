import { globSync, readFileSync } from 'node:fs'
import { dirname, relative, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'

/** What each layer may import of the project, itself included. */
const ALLOWED: Record<string, readonly string[]> = {
  calculators: ['calculators'],
  components: ['components', 'calculators'],
  pages: ['pages', 'components', 'calculators'],
}

/** Packages that would tie the pure layer to a page or to a machine. */
const NOT_IN_CALCULATORS = /^(astro|preact|node:|fs|path|@astrojs)/
const TERMINAL_FACE = /^calculators\/(cli\.ts|terminal\/)/

function importsOf(text: string): string[] {
  const statements =
    /(?:^|[\s;}])(?:import|export)\s[^'"`;]*?from\s*['"]([^'"]+)['"]|import\s*\(?\s*['"]([^'"]+)['"]/g
  return [...text.matchAll(statements)].map((match) => match[1] ?? match[2] ?? '')
}

const files = Object.keys(ALLOWED).flatMap((layer) =>
  globSync(`${layer}/**/*.{ts,tsx,astro,mjs}`).map((file) => ({ layer, file: file.replaceAll('\\', '/') })),
)

describe('imports run one way: pages → components → calculators', () => {
  it('reads the files of every layer', () => {
    expect(new Set(files.map(({ layer }) => layer))).toEqual(new Set(Object.keys(ALLOWED)))
  })

  it.each(files)('$file', ({ layer, file }) => {
    const wrong = importsOf(readFileSync(file, 'utf8')).filter((target) => {
      if (!target.startsWith('.')) {
        return layer === 'calculators' && !TERMINAL_FACE.test(file) && NOT_IN_CALCULATORS.test(target)
      }
      const folder = relative(process.cwd(), resolve(dirname(file), target)).split(/[\\/]/)[0] ?? ''
      return !ALLOWED[layer]?.includes(folder)
    })
    expect(wrong, `${file} may import from ${ALLOWED[layer]?.join(', ')} only`).toEqual([])
  })
})
