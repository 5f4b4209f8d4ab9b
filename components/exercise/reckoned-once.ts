import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/**
 * A text that takes long to reckon. Where the environment names a folder, a text that another build left there is
 * taken: the two builds of one test run have the same content, and it would be reckoned twice.
 * @param name of the text among all that a build reckons [-]
 * @param reckon makes the text [-]
 * @returns the text
 */
export function reckonedOnce(name: string, reckon: () => string): string {
  const folder = process.env['RECKONED_FOLDER']
  if (folder === undefined) return reckon()
  const file = join(folder, `${name}.json`)
  if (existsSync(file)) return readFileSync(file, 'utf8')
  const text = reckon()
  mkdirSync(folder, { recursive: true })
  writeFileSync(file, text)
  return text
}
