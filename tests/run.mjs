// Runs every check by name, so that a red line says what broke, and closes with `N passed, N failed`.
import { spawn } from 'node:child_process'
import { existsSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { commandScript, lockedNode } from './tools/locked-node.mjs'
import { ensureChromium } from './tools/chromium.mjs'

const SUB_PATH = '/manuals/fuel/'
const scratch = join(tmpdir(), `clear-return-tests-${process.pid}`)
const SUB_PATH_DIRECTORY = join(scratch, 'site')

const totals = { passed: 0, failed: 0 }

/** Runs a program and collects what it says; `green` when it ended well. */
function run(words, environment = {}) {
  return new Promise((resolve) => {
    const child = spawn(lockedNode(), words, {
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...environment },
    })
    const said = []
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (piece) => said.push(piece))
    const end = (green) => resolve({ green, output: Buffer.concat(said).toString() })
    child.on('error', (error) => {
      said.push(Buffer.from(String(error)))
      end(false)
    })
    child.on('close', (code) => end(code === 0))
  })
}

/** Runs a check; what it said is printed in one piece when it has ended, since another may run beside it. */
async function step(name, check) {
  console.log(`.. ${name}`)
  const started = Date.now()
  let result
  try {
    result = await check()
  } catch (error) {
    result = { green: false, output: String(error instanceof Error ? error.message : error) }
  }
  const { green, output = '', passed = Number(green), failed = Number(!green) } = result
  totals.passed += passed
  totals.failed += failed
  console.log(`== ${name}`)
  if (output.trim() !== '') console.log(output.trim())
  const seconds = ((Date.now() - started) / 1000).toFixed(1)
  console.log(`== ${name}: ${failed === 0 ? 'passed' : 'FAILED'} (${seconds} s)\n`)
}

/** A Vitest run counts each of its tests; a run that could not start counts as one failure. */
function vitest(name, words, environment = {}) {
  return step(name, async () => {
    const report = join(scratch, `${name.replaceAll(' ', '-')}.json`)
    const { green, output } = await run(
      [
        commandScript('vitest'),
        'run',
        '--config',
        'tests/vitest.config.mts',
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${report}`,
        ...words,
      ],
      environment,
    )
    if (!existsSync(report)) return { green: false, output }
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, 'utf8'))
    const failed = green ? numFailedTests : Math.max(1, numFailedTests)
    return { green, output, passed: numPassedTests, failed }
  })
}

const tool = (name, packageName, ...words) => step(name, () => run([commandScript(packageName), ...words]))
const build = (name, words, environment) =>
  step(name, () => run([commandScript('astro'), 'build', ...words], environment))

await step('browser installed', async () => {
  ensureChromium()
  return { green: true }
})

/** One after the other: each keeps one core busy, and both write what Astro keeps between its runs. */
async function builds() {
  rmSync('dist', { recursive: true, force: true })
  const reckoned = { RECKONED_FOLDER: join(scratch, 'reckoned') }
  await build('build', [], reckoned)
  await Promise.all([
    build('build at a sub-path', ['--outDir', SUB_PATH_DIRECTORY], { ...reckoned, BASE_PATH: SUB_PATH }),
    atTheRoot(),
  ])
}

async function atTheRoot() {
  await tool('html', 'html-validate', '--config', 'tests/lint/html-validate.json', 'dist')
  await vitest('browser, at the root', ['tests/browser/root.test.ts'])
}

/** What needs no build. */
async function sources() {
  await tool('lint', 'oxlint', '-c', 'tests/lint/oxlint.json', '--deny-warnings', '.')
  await tool('format', 'prettier', '--check', '.', '!content/**', '!tests/reference/**')
  await vitest('units, references, laws, content', [
    'tests/unit',
    'tests/reference',
    'tests/property',
    'tests/content',
  ])
}

await Promise.all([builds(), sources()])
await Promise.all([
  vitest(
    'browser, at a sub-path',
    // One more file at a time than there are cores: a test mostly waits for what its page does.
    ['tests/browser', 'tests/search', '--exclude', 'tests/browser/root.test.ts', '--maxWorkers=3'],
    { SITE_DIRECTORY: SUB_PATH_DIRECTORY, SITE_BASE: SUB_PATH },
  ),
  // It writes the same files of Astro's as the builds do, and so must wait for them.
  tool('types', 'astro', 'check'),
])

rmSync(scratch, { recursive: true, force: true })
console.log(`${totals.passed} passed, ${totals.failed} failed`)
process.exitCode = totals.failed === 0 ? 0 : 1
