// The browser for the tests: the one named by CHROMIUM_PATH, else one that is installed, else one that this
// script installs: Debian's package where it can, otherwise the build that playwright-core knows.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { chromium } from 'playwright-core'

const USUAL_PLACES = [
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

/** Installs Chromium when there is none. Throws with what to do when that fails. */
export function ensureChromium() {
  if (findChromium()) return
  console.log('Installing Chromium …')
  if (existsSync('/usr/bin/apt-get')) {
    const prefix = process.getuid?.() === 0 ? [] : ['sudo', '-n']
    const apt = (...words) => {
      const [command, ...rest] = [...prefix, 'apt-get', '-qq', ...words]
      return runQuietly(command, rest)
    }
    apt('update')
    apt('install', '-y', '--no-install-recommends', 'chromium')
  }
  if (!findChromium())
    runQuietly(process.execPath, ['node_modules/playwright-core/cli.js', 'install', 'chromium'])
  if (!findChromium())
    throw new Error('No Chromium was found or could be installed: install one and set CHROMIUM_PATH to it.')
}
