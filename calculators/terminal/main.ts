import type { Answer, Command } from './command.ts'
import { quoted, refused } from './command.ts'
import { circuit } from './circuit.ts'
import { compute } from './compute.ts'
import { faults } from './faults.ts'
import { list } from './list.ts'
import { observations } from './observations.ts'
import { rankCauses } from './rank.ts'

/** A new command is a file of its own and one entry here. */
const commands: readonly Command[] = [list, compute, circuit, faults, observations, rankCauses]

/** More than any table of readings needs; a wrong file is not read to its end. */
const LONGEST_INPUT = 1_000_000
const REFUSED = 2

function help(): string {
  const lines = commands.map(
    ({ name, usage, summary }) => `  ${`${name} ${usage}`.trim().padEnd(12)} ${summary}`,
  )
  return [
    'Clear Return: the calculators of the handbook in a terminal.',
    '',
    'node calculators/cli.ts COMMAND',
    ...lines,
    '  help         prints this',
    '',
    'Inputs are numbers in SI, or texts with a unit or arithmetic in them: "45 psi", "2 bar + 30 kPa".',
    'What is left out takes its default, which `list` states under "defaults"; a page starts with its worked example.',
    '"accuracies": {"INPUT": "2 %"} replaces the stated accuracies.',
    '',
    `  echo '{"wantedTemperature": "15 degC"}' | node calculators/cli.ts compute viscosity-at-temperature`,
    `  echo '{"circuit": "pq-12", "state": "full", "faults": {"suction-strainer-plugged": 0.5}}' | node calculators/cli.ts circuit`,
    '',
    `  echo '{"circuit": "pq-12", "observations": [{"id": "return-glass", "state": "priming", "value": "bubbles"}]}' | node calculators/cli.ts rank`,
    '',
    '`circuit` also takes "conditions": {"tankTemperature": "5 degC", "tankLevel": 0.3} and',
    '"parts": {"return-line": {"opening": 0.2}, "injectors": {"inletLoading": {"3": 50}}}.',
    '',
    'A refusal is printed as {"refusal": {"field", "reason", "accepted"}} and ends with status 2.',
  ].join('\n')
}

async function standardInput(): Promise<string> {
  let text = ''
  process.stdin.setEncoding('utf8')
  for await (const piece of process.stdin) {
    text += piece as string
    if (text.length > LONGEST_INPUT) break
  }
  // Some editors and shells put a byte order mark first.
  return text.replace(/^\uFEFF/, '')
}

async function answer([name, ...words]: readonly string[]): Promise<Answer> {
  if (name === undefined || ['help', '--help', '-h'].includes(name)) return { text: help() }
  const command = commands.find((each) => each.name === name)
  if (!command)
    return refused('', `${quoted(name)} is not a command`, commands.map((each) => each.name).join(', '))
  try {
    return await command.run(words, standardInput)
  } catch (error) {
    const what = error instanceof Error ? error.message : String(error)
    return refused('', `\`${name}\` failed: ${what}`, 'the commands that `help` prints')
  }
}

const given = await answer(process.argv.slice(2))
process.stdout.write(
  `${'text' in given ? given.text : JSON.stringify('json' in given ? given.json : given, null, 2)}\n`,
)
process.exitCode = 'refusal' in given ? REFUSED : 0
