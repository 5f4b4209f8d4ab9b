import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** Path of the Node that the lock file names, else of the running one. */
export function lockedNode() {
  const candidates = ['node', 'node.exe'].map((name) => join('node_modules', 'node', 'bin', name))
  return candidates.find(existsSync) ?? process.execPath
}

/** Path of the script behind a package's one command, so that no shell is needed to start it. */
export function commandScript(packageName) {
  const folder = join('node_modules', packageName)
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  const scripts = typeof bin === 'string' ? [bin] : Object.values(bin)
  return join(folder, scripts[0])
}
