// The browser for the tests: the one named by CHROMIUM_PATH, else one that is installed, else one that this
// script installs: Debian's package where it can, otherwise the build that playwright-core knows.
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { chromium } from 'playwright-core'

/** Debian's Chromium without windows: with them each context costs twice as much. */
const WITHOUT_WINDOWS = '/usr/lib/chromium/chromium-headless-shell'

const USUAL_PLACES = [
  WITHOUT_WINDOWS,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
]

/** Path of an installed Chromium, or undefined. */
export function findChromium() {
  const named = process.env.CHROMIUM_PATH
  if (named) {
    if (existsSync(named)) return named
    throw new Error(`CHROMIUM_PATH names «${named}», where there is no file.`)
  }
  return [...USUAL_PLACES, chromium.executablePath()].find((path) => path && existsSync(path))
}

function runQuietly(command, commandArguments) {
  return spawnSync(command, commandArguments, { stdio: ['ignore', 'ignore', 'inherit'] }).status === 0
}

/** Whether a Debian package could be installed; the lists of packages are fetched where they are not there yet. */
function installPackage(name) {
  const prefix = process.getuid?.() === 0 ? [] : ['sudo', '-n']
  const apt = (...words) => {
    const [command, ...rest] = [...prefix, 'apt-get', '-qq', ...words]
    return runQuietly(command, rest)
  }
  const install = () => apt('install', '-y', '--no-install-recommends', name)
  return install() || (apt('update') && install())
}

const isDebian = () =>
  existsSync('/etc/os-release') && /^ID=debian$/m.test(readFileSync('/etc/os-release', 'utf8'))

/** Installs Chromium when there is none. Throws with what to do when that fails. */
export function ensureChromium() {
  if (process.env.CHROMIUM_PATH || existsSync(WITHOUT_WINDOWS)) return void findChromium()
  if (isDebian()) {
    console.log('Installing Chromium …')
    installPackage('chromium-headless-shell')
  }
  if (findChromium()) return
  console.log('Installing Chromium …')
  if (existsSync('/usr/bin/apt-get')) installPackage('chromium')
  if (!findChromium())
    runQuietly(process.execPath, ['node_modules/playwright-core/cli.js', 'install', 'chromium'])
  if (!findChromium())
    throw new Error('No Chromium was found or could be installed: install one and set CHROMIUM_PATH to it.')
}
