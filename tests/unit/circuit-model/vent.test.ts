import { describe, expect, it } from 'vitest'
import { coldFields } from '../../../calculators/circuit/fields.ts'
import { airThroughLeak } from '../../../calculators/circuit/gas.ts'
import { situationOf } from '../../../calculators/circuit/situation.ts'
import { pressureUnderVent } from '../../../calculators/circuit/vent.ts'
import { conditionsOf, modelOf } from './shipped.ts'

/** PQ-12 with its vent open by a share of its area, and nothing flowing yet. */
function tankWith(open: number) {
  const model = modelOf('pq-12')
  const conditions = conditionsOf(model, 'full')
  const parameters = [{ part: 'tank', parameter: 'ventOpen', value: open }]
  const read = situationOf(model, conditions, { parameters, conditions: {} })
  if (!read.ok) throw new Error(read.reason)
  const { situation } = read
  const fields = coldFields(situation)
  const mouth = model.nodes.findIndex((node) => node.mouth)
  const drawn = model.links.findIndex(({ from }) => from === mouth)
  const under = (leaving: number): number => {
    fields.flow[drawn] = leaving
    return pressureUnderVent(situation, fields)
  }
  const tank = model.parts.find(({ id }) => id === 'tank')
  return { conditions, under, bore: (tank?.values.ventBore ?? Number.NaN) * Math.sqrt(open) }
}

describe('the pressure under the vent', () => {
  it.each([1e-3, 1e-2, 1])('lets in as much air as fuel leaves, with %d of it open', (open) => {
    const { conditions, under, bore } = tankWith(open)
    for (const leaving of [1e-9, 1e-7, 1e-6, 1e-5]) {
      const inside = under(leaving)
      const air = airThroughLeak(bore, conditions.airPressure, inside, conditions.ambientTemperature)
      const volume = (air * conditions.tankTemperature) / inside
      // Found to a ten-millionth of a pascal: of the smallest drops that is a part.
      const within = 1e-9 + 2e-7 / (conditions.airPressure - inside)
      expect(Math.abs(volume / leaving - 1), `${leaving}`).toBeLessThan(within)
    }
  })

  it('rests at half of the air outside where more leaves than it can let in', () => {
    const { conditions, under } = tankWith(1e-4)
    expect(under(1e-3)).toBeCloseTo(0.5 * conditions.airPressure, 6)
  })

  it('falls steadily with what leaves, and never below half of the air outside', () => {
    const { conditions, under } = tankWith(1e-4)
    const pressures = Array.from({ length: 60 }, (_, step) => under(10 ** (-10 + step / 8)))
    pressures.forEach((pressure, step) => {
      expect(pressure).toBeGreaterThanOrEqual(0.5 * conditions.airPressure * (1 - 1e-12))
      expect(pressure).toBeLessThanOrEqual(pressures[step - 1] ?? conditions.airPressure)
    })
  })

  it('is that of the air outside where nothing leaves, or more comes back', () => {
    const { conditions, under } = tankWith(1)
    for (const leaving of [0, 1e-13, -1e-4]) expect(under(leaving)).toBe(conditions.airPressure)
  })
})
