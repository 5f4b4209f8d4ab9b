// Installs what the lock file says, unless it is there already, so that `npm start` and `npm test` work on a
// fresh machine. Plain JavaScript for an old Node: it runs before the locked Node is there.
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'

const readJson = (path) => JSON.parse(readFileSync(path, 'utf8'))

/** Whether every package that the lock asks for on every machine is installed in that version. */
function isInstalled() {
  const installedLock = 'node_modules/.package-lock.json'
  if (!existsSync(installedLock)) return false
  const installed = readJson(installedLock).packages
  return Object.entries(readJson('package-lock.json').packages).every(
    ([path, wanted]) => path === '' || wanted.optional || installed[path]?.version === wanted.version,
  )
}

if (!isInstalled()) {
  console.log('Installing what package-lock.json names …')
  // The Node that npm itself runs on: the locked one may be about to be replaced.
  const node = process.env.npm_node_execpath ?? process.execPath
  const npm = process.env.npm_execpath
  const result = npm
    ? spawnSync(node, [npm, 'ci', '--no-audit', '--no-fund'], { stdio: 'inherit' })
    : { status: 1 }
  if (result.status !== 0) {
    console.error('The packages could not be installed: run `npm ci` and look at what it says.')
    process.exit(1)
  }
}
