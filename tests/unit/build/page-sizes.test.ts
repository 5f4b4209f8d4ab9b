import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { kindOfPage, overBudget, pageSizes } from '../../../components/build/page-sizes.ts'
import type { PageSize } from '../../../components/build/page-sizes.ts'

const BASE = '/manuals/fuel'
const folder = mkdtempSync(join(tmpdir(), 'page-sizes-'))
const files: Record<string, string> = {
  '_astro/search.a.js': 'import{a}from"./shared.b.js";const e=()=>import(`./engine.c.js`)',
  '_astro/shared.b.js': 'export const a=1',
  '_astro/engine.c.js': 'export const engine=2',
  '_astro/wake.d.js': 'import("./mount.e.js")',
  '_astro/mount.e.js': 'import{h}from"./framework.f.js";const x=()=>import(`./mathematics.g.js`)',
  '_astro/framework.f.js': 'export const h=(n)=>n.__k',
  '_astro/mathematics.g.js': `/*${'x'.repeat(5000)}*/`,
  '_astro/density.h.js': 'export const density=3',
  '_astro/solver.i.js': 'import"./network.j.js";export const solver=4',
  '_astro/network.j.js': 'export const network=5',
  '_astro/Bench.k.js': 'export const bench=6',
  '_astro/SmallBench.l.js': 'export const smallBench=7',
  'bench/x.json': '{"data":8}',
  '_astro/worker-a1B2_c3D.js': 'export const worker=9',
  'causes/x.json': '{"questions":10}',
  'causes/knowledge/x.json': '{"signatures":11}',
}

beforeAll(() => {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true })
    writeFileSync(join(folder, name), text)
  }
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const script = (name: string) => `<script type="module" src="${BASE}/_astro/${name}"></script>`
const sizeOf = (html: string): PageSize => {
  const [size] = pageSizes(folder, BASE, [{ path: '/circuit/x/', html }])
  if (!size) throw new Error('no size')
  return size
}

it.each([
  ['/', 'start'],
  ['/circuit/', 'list'],
  ['/404.html', 'list'],
  ['/circuit/the-circuit/', 'article'],
  ['/calculators/density-and-volume/', 'calculator'],
  ['/bench/', 'list'],
  ['/bench/pq-12/', 'bench'],
  ['/causes/', 'finder'],
])('%s is of the kind %s', (path, kind) => {
  expect(kindOfPage(path)).toBe(kind)
})

describe('the size of a page', () => {
  it('counts a script with all that it imports, inline code too, and apart from it what is fetched later', () => {
    const plain = sizeOf('<p>text</p>')
    const searching = sizeOf(script('search.a.js'))
    const twice = sizeOf(script('search.a.js') + script('search.a.js'))
    expect(plain).toMatchObject({ script: 0, onDemand: 0, framework: [] })
    expect(searching.script).toBeGreaterThan(0)
    expect(searching.onDemand).toBeGreaterThan(0)
    expect(twice.script).toBe(searching.script)
    expect(sizeOf(`${script('search.a.js')}<script>a()</script>`).script).toBeGreaterThan(searching.script)
  })

  it('counts of a bench its form, the model with all that it imports, and the data; nothing where none stands', () => {
    const wake = script('wake.d.js')
    const bench = (rest: string) =>
      sizeOf(`${wake}<circuit-bench data-source="${BASE}/bench/x.json" data-name="b"${rest}></circuit-bench>`)
    const [whole, small] = [bench(''), bench(' data-preset="{}"')]
    expect(sizeOf(wake).model).toBe(0)
    expect(whole.model).toBeGreaterThan(0)
    expect(small.model).toBe(whole.model)
    expect(whole.onDemand).toBeGreaterThan(whole.model)
    expect(small.onDemand).not.toBe(whole.onDemand)
    expect(whole.framework).toEqual([])
  })

  it('counts of the finder of causes the worker and the two files of its first circuit', () => {
    const circuit = (id: string) =>
      `{&quot;offer&quot;:&quot;${BASE}/causes/${id}.json&quot;,&quot;knowledge&quot;:&quot;${BASE}/causes/knowledge/${id}.json&quot;}`
    const finder = (...ids: string[]) =>
      sizeOf(
        `${script('wake.d.js')}<fault-finder data-circuits="[${ids.map(circuit).join()}]"></fault-finder>`,
      )
    const [one, missing] = [finder('x'), finder('none')]
    expect(one.framework).toEqual([])
    expect(missing.ranking).toBeGreaterThan(0)
    expect(one.ranking).toBeGreaterThan(missing.ranking)
    expect(finder('x', 'y').ranking).toBe(one.ranking)
    expect(sizeOf(script('wake.d.js')).ranking).toBe(0)
  })

  it('leaves out what a calculator fetches only for an expression', () => {
    const size = sizeOf(`${script('wake.d.js')}<calculator-form data-calculator="density"></calculator-form>`)
    expect(size.framework).toEqual([])
    expect(size.onDemand).toBeGreaterThan(0)
    expect(size.onDemand).toBeLessThan(400)
  })

  it('names the framework where no calculator needs it, and at the first view anywhere', () => {
    const framework = `${BASE}/_astro/framework.f.js`
    expect(sizeOf(script('wake.d.js')).framework).toEqual([framework])
    const first = sizeOf(
      `${script('mount.e.js')}<calculator-form data-calculator="density"></calculator-form>`,
    )
    expect(first.framework).toEqual([framework])
    expect(overBudget([first])).toEqual([
      `/circuit/x/: framework code where no calculator needs it: ${framework}; allowed: none`,
    ])
  })
})

it('a page above its budget is named with what it weighs and what is allowed', () => {
  const size: PageSize = { ...sizeOf(''), html: 1e6 }
  expect(overBudget([size])).toEqual(['/circuit/x/: HTML is 1000000 bytes compressed, allowed: 45056'])
})
