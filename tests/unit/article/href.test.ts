import { afterEach, describe, expect, it, vi } from 'vitest'
import { href } from '../../../components/layout/href.ts'

describe('an address of the site', () => {
  afterEach(() => vi.unstubAllEnvs())

  it.each([
    ['/', '/', '/manuals/fuel/'],
    ['/symptoms/', '/symptoms/', '/manuals/fuel/symptoms/'],
    ['circuit/the-two-valves', '/circuit/the-two-valves/', '/manuals/fuel/circuit/the-two-valves/'],
    ['/glossary#priming', '/glossary/#priming', '/manuals/fuel/glossary/#priming'],
    ['/all/?q=a%20b', '/all/?q=a%20b', '/manuals/fuel/all/?q=a%20b'],
    ['/icon.svg', '/icon.svg', '/manuals/fuel/icon.svg'],
  ])('%s at the root and in a folder', (path, atRoot, inFolder) => {
    vi.stubEnv('BASE_URL', '/')
    expect(href(path)).toBe(atRoot)
    for (const base of ['/manuals/fuel', '/manuals/fuel/']) {
      vi.stubEnv('BASE_URL', base)
      expect(href(path)).toBe(inFolder)
    }
  })
})
