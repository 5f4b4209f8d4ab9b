// Runs every check by name, so that a red line says what broke, and closes with `N passed, N failed`.
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { commandScript, lockedNode } from './tools/locked-node.mjs'
import { ensureChromium } from './tools/chromium.mjs'

const SUB_PATH = '/manuals/fuel/'
const scratch = join(tmpdir(), `clear-return-tests-${process.pid}`)
const SUB_PATH_DIRECTORY = join(scratch, 'site')

const totals = { passed: 0, failed: 0 }

function run(words, environment = {}) {
  const result = spawnSync(lockedNode(), words, {
    stdio: 'inherit',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...environment },
  })
  return result.status === 0
}

function step(name, check) {
  console.log(`\n== ${name}`)
  const started = Date.now()
  let counted
  try {
    counted = check()
  } catch (error) {
    console.error(error instanceof Error ? error.message : error)
    counted = false
  }
  const { passed, failed } =
    typeof counted === 'object' ? counted : { passed: Number(counted), failed: Number(!counted) }
  totals.passed += passed
  totals.failed += failed
  console.log(
    `== ${name}: ${failed === 0 ? 'passed' : 'FAILED'} (${((Date.now() - started) / 1000).toFixed(1)} s)`,
  )
}

/** A Vitest run counts each of its tests; a run that could not start counts as one failure. */
function vitest(name, folders, environment = {}) {
  step(name, () => {
    const report = join(scratch, `${name.replaceAll(' ', '-')}.json`)
    const green = run(
      [
        commandScript('vitest'),
        'run',
        '--config',
        'tests/vitest.config.mts',
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${report}`,
        ...folders,
      ],
      environment,
    )
    if (!existsSync(report)) return false
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, 'utf8'))
    return { passed: numPassedTests, failed: green ? numFailedTests : Math.max(1, numFailedTests) }
  })
}

const tool = (packageName, ...words) => run([commandScript(packageName), ...words])
const build = (words, environment) => run([commandScript('astro'), 'build', ...words], environment)

step('browser installed', () => {
  ensureChromium()
  return true
})
step('types', () => tool('astro', 'check'))
step('lint', () => tool('oxlint', '-c', 'tests/lint/oxlint.json', '--deny-warnings', '.'))
step('format', () => tool('prettier', '--check', '.', '!content/**', '!tests/reference/**'))
vitest('units, references, laws, content', [
  'tests/unit',
  'tests/reference',
  'tests/property',
  'tests/content',
])
rmSync('dist', { recursive: true, force: true })
step('build', () => build([]))
step('html', () => tool('html-validate', '--config', 'tests/lint/html-validate.json', 'dist'))
step('build at a sub-path', () => build(['--outDir', SUB_PATH_DIRECTORY], { BASE_PATH: SUB_PATH }))
vitest('browser, at the root', ['tests/browser/root.test.ts'])
vitest(
  'browser, at a sub-path',
  ['tests/browser', 'tests/search', '--exclude', 'tests/browser/root.test.ts'],
  {
    SITE_DIRECTORY: SUB_PATH_DIRECTORY,
    SITE_BASE: SUB_PATH,
  },
)

rmSync(scratch, { recursive: true, force: true })
console.log(`\n${totals.passed} passed, ${totals.failed} failed`)
process.exitCode = totals.failed === 0 ? 0 : 1
