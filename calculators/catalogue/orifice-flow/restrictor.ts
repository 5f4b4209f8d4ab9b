import type { Notice, Refusal } from '../../calculator/types.ts'
import { orificeFlow, reynoldsOn } from '../../hydraulics/orifice-flow.ts'
import {
  restrictorCoefficient,
  restrictorDrop,
  RESTRICTORS,
  type Restrictor,
} from '../../hydraulics/restrictor.ts'
import { formatIn } from '../../quantity/format.ts'
import type { Values } from './compute.ts'
import type { Found } from './plate.ts'

const millimetres = (length: number) => formatIn(length, 'length', 'mm')

const WIDE_BORE = 0.5
const WIDEST_BORE = 0.9

/** A small restrictor outside every standard: the middle of our own range, with its ends. */
export function restrictor(input: Values, form: 'sharp' | 'thick'): Found | { refusal: Refusal } {
  const { bore, pipe, density, kinematicViscosity } = input
  if (bore > WIDEST_BORE * pipe)
    return {
      refusal: {
        field: 'bore',
        reason: `The bore of the orifice is ${millimetres(bore)} in a line of ${millimetres(pipe)}: that is hardly an orifice`,
        accepted: 'a bore of at most 0.9 of the line',
      },
    }
  const { low, middle, high } = RESTRICTORS[form]
  const cAt = (one: Restrictor, drop: number) =>
    restrictorCoefficient(one, bore, drop, density, kinematicViscosity)
  const drop =
    input.solve === 'flow'
      ? input.drop
      : restrictorDrop(middle, bore, pipe, input.flow, density, kinematicViscosity)
  const flowAt = (one: Restrictor) => orificeFlow(cAt(one, drop), bore, pipe, drop, density)
  const flow = input.solve === 'flow' ? flowAt(middle) : input.flow
  const notices: Notice[] = [
    {
      grade: 'caution',
      text: 'No standard covers a restrictor so small. The range of coefficients is our own, and the flow may lie anywhere between the two ends. Time a measured volume through it before anything rests on this.',
    },
  ]
  if (bore > WIDE_BORE * pipe)
    notices.push({
      grade: 'caution',
      text: 'The bore is more than half the line. Coefficients above our range occur there at small Reynolds numbers.',
    })
  return {
    flow,
    drop,
    coefficient: cAt(middle, drop),
    low: cAt(low, drop),
    high: cAt(high, drop),
    reynolds: reynoldsOn(flow, bore, kinematicViscosity),
    notices,
  }
}
