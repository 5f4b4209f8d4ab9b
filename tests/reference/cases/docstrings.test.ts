import { globSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'

const sources = new Set(Object.keys(parse(readFileSync('content/sources/sources.yaml', 'utf8')) as object))

interface Documented {
  readonly name: string
  readonly parameters: readonly string[]
  readonly comment: string
}

/** Every exported function of a file with the comment that stands straight above it. */
function exportedFunctions(file: string): Documented[] {
  const text = readFileSync(file, 'utf8')
  const pattern = /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n)?export function (\w+)\(([^)]*)\)/g
  return [...text.matchAll(pattern)].map(([, comment = '', name = '', list = '']) => ({
    name: `${file}: ${name}`,
    parameters: [...list.matchAll(/(\w+)\s*:/g)].map(([, parameter = '']) => parameter),
    comment: comment.replaceAll(/\n \* ?/g, '\n'),
  }))
}

/** The text of each tag, up to the next one. */
function tags(comment: string, tag: string): string[] {
  return [...comment.matchAll(new RegExp(`@${tag}\\s((?:(?!\\n@)[\\s\\S])*)`, 'g'))].map(
    ([, text = '']) => text,
  )
}

const functions = ['fuel', 'hydraulics', 'heat', 'cleanliness', 'engine', 'statistics']
  .flatMap((folder) => globSync(`calculators/${folder}/*.ts`))
  .map((file) => file.replaceAll('\\', '/'))
  .flatMap(exportedFunctions)

test('finds the formulas', () => {
  expect(functions.length).toBeGreaterThan(20)
})

describe.each(functions)('$name', ({ parameters, comment }) => {
  test('says the unit of every argument', () => {
    const documented = tags(comment, 'param')
    const missing = parameters.filter(
      (name) => !documented.some((text) => text.startsWith(`${name} `) && /\[[^\]]+\]/.test(text)),
    )
    // A value made of others may lean on the function that made it.
    const leaning = missing.filter(
      (name) => !documented.some((text) => text.startsWith(`${name} `) && / from \w+/.test(text)),
    )
    expect(leaning).toEqual([])
  })

  test('says what it returns', () => {
    expect(tags(comment, 'returns')).toHaveLength(1)
  })

  test('names its source, one of the list or common practice', () => {
    const [named = ''] = tags(comment, 'source')
    const ids = named.match(/[a-z][a-z0-9]*(?:-[a-z0-9]+)+/g)?.filter((word) => sources.has(word)) ?? []
    expect(ids.length > 0 || named.includes('common practice')).toBe(true)
  })
})
