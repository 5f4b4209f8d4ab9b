import type { CollectionEntry } from 'astro:content'
import { figureOf, usualSetting } from './setting.ts'
import { solverOf } from './solver.ts'
import type { BenchData, Preset, Setting } from './types.ts'

/**
 * A preset of content/benches, read for its circuit. What it names and the circuit does not have fails the build,
 * with what there is.
 */
export function presetOf(entry: CollectionEntry<'benches'>['data'], data: BenchData): Preset {
  const { title, caption, conditions, faults, show, move } = entry
  const usual = usualSetting(data)
  const temperature = (text: string | undefined, otherwise: number): number =>
    text === undefined ? otherwise : figureOf(text, 'temperature')
  const setting: Setting = {
    state: conditions.state,
    fuel: conditions.fuel ?? usual.fuel,
    tankTemperature: temperature(conditions.tankTemperature, usual.tankTemperature),
    ambientTemperature: temperature(conditions.ambientTemperature, usual.ambientTemperature),
    tankLevel: conditions.tankLevel === undefined ? usual.tankLevel : figureOf(conditions.tankLevel, 'ratio'),
    height: conditions.height === undefined ? usual.height : figureOf(conditions.height, 'length'),
    faults: Object.fromEntries(
      Object.entries(faults).flatMap(([id, severity]) => (severity === undefined ? [] : [[id, severity]])),
    ),
  }
  const solved = solverOf(data)(setting)
  if (!solved.ok) throw new Error(`content/benches: «${title}» has no answer: ${solved.reason}`)
  const check = (what: string, named: readonly string[], allowed: readonly string[]): void => {
    const unknown = named.filter((id) => !allowed.includes(id))
    if (unknown.length > 0)
      throw new Error(
        `content/benches: «${title}»: ${what} ${unknown.join(', ')}: not in ${data.id}; allowed: ${allowed.join(', ')}`,
      )
  }
  const faultIds = data.faults.map(({ id }) => id)
  const conditionNames = Object.keys(usual).filter((id) => id !== 'faults')
  check(
    'show.glasses',
    show.glasses,
    solved.glasses.map(({ part }) => part),
  )
  check(
    'show.readings',
    show.readings,
    solved.readings.map(({ id }) => id),
  )
  check('faults', Object.keys(faults), faultIds)
  check('move', move, [...conditionNames, ...faultIds])
  return { title, caption, setting, glasses: show.glasses, readings: show.readings, move }
}
