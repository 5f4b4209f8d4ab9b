import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'

const content = join(import.meta.dirname, '../../../content')

export interface Entry<Data> {
  readonly id: string
  readonly data: Data
  /** Text under the front matter; empty in a YAML file. */
  readonly body: string
}

export interface Procedure {
  readonly cautions: readonly string[]
  readonly acceptance: readonly { what: string; setPoints?: readonly string[] }[]
}

export interface Symptom {
  readonly cautions: readonly string[]
  readonly alsoCalled: readonly string[]
  readonly firstChecks: readonly { check: string; means: string; procedure?: string }[]
  readonly causes: readonly { fault: string; shows: string; tellApart: string }[]
}

export interface Fault {
  readonly frequency: string
  readonly confirm: string
  readonly procedure: string
}

/** Entries of a collection that keeps one file an entry. */
export function entriesOf<Data>(collection: string): Entry<Data>[] {
  return readdirSync(join(content, collection))
    .filter((name) => /\.(mdx|yaml)$/.test(name))
    .map((name) => {
      const text = readFileSync(join(content, collection, name), 'utf8')
      const [, front, body] = /^---\n(.*?)\n---\n(.*)$/s.exec(text) ?? [text, text, '']
      return { id: name.replace(/\.\w+$/, ''), data: parse(front ?? '') as Data, body: body ?? '' }
    })
}

/** What stands under the keys of one YAML file. */
export function yamlFile<Value>(path: string): Record<string, Value> {
  return parse(readFileSync(join(content, path), 'utf8')) as Record<string, Value>
}

/** Values of one attribute of a component, in the order in which they stand in a body. */
export function attributesIn(body: string, component: string, attribute: string): string[] {
  return [...body.matchAll(new RegExp(`<${component}\\b[^>]*?\\b${attribute}="([^"]+)"`, 'g'))].map(
    (match) => match[1] ?? '',
  )
}
