import { spawnSync } from 'node:child_process'
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const CLI = join(process.cwd(), 'calculators', 'cli.ts')

/** Another Node of the machine, perhaps one that reads no TypeScript, beside the one that runs these tests. */
const nodes = [
  process.execPath,
  ...['/usr/bin/node', '/usr/local/bin/node'].filter((path) => existsSync(path)),
]

function cli(node: string, words: readonly string[], input = '', cwd = process.cwd()) {
  const { status, stdout, stderr } = spawnSync(node, [CLI, ...words], { input, cwd, encoding: 'utf8' })
  return { status, stdout, stderr }
}

describe.each(nodes)('started by %s', (node) => {
  it.each<[readonly string[], string]>([
    [['fly'], '«fly» is not a command'],
    [['list', 'all'], '`list` takes nothing behind it'],
    [['compute'], '`compute` needs the id of a calculator'],
    [['compute', '__proto__'], '«__proto__» is not a calculator'],
    [['compute', 'a', 'b'], '«b» is one word too many'],
    [['compute', 'viscosity-at-temperature'], 'Standard input is empty'],
  ])('%j is refused with status 2', (words, reason) => {
    const { status, stdout, stderr } = cli(node, words)
    expect({ status, stderr }).toEqual({ status: 2, stderr: '' })
    expect(JSON.parse(stdout)).toMatchObject({ refusal: { field: '', reason } })
  })

  it('computes, from another folder and with a byte order mark in front', () => {
    const input = '\uFEFF{"firstTemperature": "40 degC", "wantedTemperature": "59 degF"}'
    const { status, stdout, stderr } = cli(node, ['compute', 'viscosity-at-temperature'], input, tmpdir())
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
    const outputs = {
      kinematicViscosity: { value: expect.any(Number), unit: 'm2/s', uncertainty: expect.any(Number) },
    }
    expect(JSON.parse(stdout)).toMatchObject({
      outputs,
      steps: expect.any(Array),
      notices: expect.any(Array),
    })
  })

  it('lists what there is', () => {
    const { status, stdout } = cli(node, ['list'], '', tmpdir())
    expect(status).toBe(0)
    const ids = (JSON.parse(stdout) as Array<{ id: string }>).map((calculator) => calculator.id)
    expect(ids).toContain('viscosity-at-temperature')
  })

  it.each([[[]], [['help']], [['--help']]])('helps for %j', (words) => {
    const { status, stdout } = cli(node, words)
    expect(status).toBe(0)
    expect(stdout).toContain('compute ID')
  })

  it('says what to do where the packages are not installed', () => {
    const folder = mkdtempSync(join(tmpdir(), 'clear-return-'))
    try {
      mkdirSync(join(folder, 'calculators'))
      copyFileSync(CLI, join(folder, 'calculators', 'cli.ts'))
      const { status, stderr } = spawnSync(node, [join(folder, 'calculators', 'cli.ts'), 'list'], {
        encoding: 'utf8',
      })
      expect(status).toBe(1)
      expect(stderr).toContain('npm ci')
    } finally {
      rmSync(folder, { recursive: true })
    }
  })
})
