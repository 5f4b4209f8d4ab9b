import { z } from 'astro/zod'
import { conditionFigures } from '../../calculators/circuit/condition-ranges.ts'
import { partKinds, type PartKindId } from '../../calculators/circuit/part-kinds.ts'
import {
  engineFigures,
  type CircuitData,
  type EngineFigure,
  type FigureCondition,
} from '../../calculators/circuit/types.ts'
import { readCircuit } from '../../calculators/circuit/read-model.ts'
import { circuitProblems, type CircuitProblem } from '../../calculators/circuit/validate.ts'
import { drawingProblems } from '../circuit/layout.ts'
import type { KindId } from '../../calculators/quantity/types.ts'
import type { DrawnCircuit } from '../circuit/types.ts'
import { portNames, symbolIds } from '../circuit/symbols/geometry.ts'
import { figure, fuelId, oneOf, pagePath, plantId, procedureId, sentence, text } from './fields.ts'
import { fuelsOf, setPointsOf, type SetPoints } from './ids.ts'

/** Suction, supply, return and drain carry fuel; a gauge line a pressure or a temperature, a shaft a torque. */
const lineKind = z.enum(['suction', 'supply', 'return', 'drain', 'gauge', 'shaft'])

/** A place on the drawing's grid, in steps from its upper left corner. */
const place = z.tuple([z.number().nonnegative(), z.number().nonnegative()])

const elementId = z.string().regex(/^[a-z0-9-]+$/)

/** 'element.port' or 'junction.side'. */
const end = z.string().regex(/^[a-z0-9-]+\.[a-z0-9-]+$/)

/** A figure with its unit, or the id of a set point of the plant; its kind is checked with all of the circuit. */
const figureText = z.string({
  error: ({ input }) =>
    `«${String(input)}» is not a text; allowed: a number and a unit in one text such as '450 kPa', or the id of a set point of the plant`,
})

const partKindIds = Object.keys(partKinds) as PartKindId[]
const engineFigureIds = Object.keys(engineFigures) as EngineFigure[]

const range = (kind: KindId) => z.tuple([figure(kind), figure(kind)])

export const circuit = z
  .strictObject({
    title: text,
    summary: sentence,
    plant: plantId,
    invented: z.boolean(),
    /** Size of the drawing in grid steps. */
    size: z.strictObject({ width: z.number().positive(), height: z.number().positive() }),
    /** The engine that it serves. */
    engine: z.record(z.enum(engineFigureIds), figureText),
    /** Where nobody chose other conditions. */
    usual: z.strictObject({
      fuel: fuelId,
      tankTemperature: figureText,
      ambientTemperature: figureText,
      tankLevel: figureText,
    }),
    /** Least and largest that a person may choose. */
    ranges: z.strictObject({
      tankTemperature: range('temperature'),
      ambientTemperature: range('temperature'),
      tankLevel: range('ratio'),
      airPressure: range('absolutePressure'),
      /** Why not beyond, where that is not plain. */
      why: z.partialRecord(z.enum(Object.keys(conditionFigures) as FigureCondition[]), sentence).default({}),
    }),
    /** Fuels that it can be run on. */
    fuels: z.array(fuelId).min(1),
    elements: z
      .array(
        z.strictObject({
          id: elementId,
          /** Place on the way of the fuel from tank to tank; parts off that way have none. */
          number: z.number().int().positive().optional(),
          symbol: oneOf('components/circuit/symbols', symbolIds),
          /** How many like parts the symbol stands for: twelve injectors in a row, a header with twelve branches. */
          count: z.number().int().positive().default(1),
          label: text,
          at: place,
          turn: z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]).default(0),
          /** Middle of the number's circle; the words stand to its right, or to its left where labelAlign is end. */
          labelAt: place,
          labelAlign: z.enum(['start', 'end']).default('start'),
          /** Most letters in one line of the label. */
          labelWrap: z.number().int().positive().default(14),
          /** A few words under the label: how the part looks in health. */
          note: text.max(24).optional(),
          /** Height of its middle above the floor of the tank. */
          height: figureText.optional(),
          /** What it is to the model, and its figures. */
          model: z
            .object({ kind: oneOf('calculators/circuit/part-kinds.ts', partKindIds) })
            .catchall(figureText),
          /** What it is for. */
          purpose: sentence,
          /** What its glass or gauge shows in health. */
          inHealth: sentence,
          /** Set points of the plant that say so in figures. */
          setPoints: z.array(text).default([]),
          article: pagePath.optional(),
          procedure: procedureId.optional(),
        }),
      )
      .min(2),
    /** Where three or four lines meet; its ports are left, right, up and down. */
    junctions: z.array(z.strictObject({ id: elementId, at: place, height: figureText })).default([]),
    connections: z
      .array(
        z.strictObject({
          /** In the direction of the fuel. */
          from: end,
          to: end,
          line: lineKind,
          via: z.array(place).default([]),
          /** Words along the line, and where they start. */
          name: z.strictObject({ text, at: place }).optional(),
          /** Its length, bore and losses where it has a length; without it both ends are one place. */
          pipe: z.object({ id: elementId, label: text }).catchall(figureText).optional(),
        }),
      )
      .min(1),
  })
  .superRefine((data, context) => {
    const setPoints = setPointsOf(data.plant)
    const allowed = Object.keys(setPoints).join(', ')
    const unknown = data.elements.flatMap((element, index) =>
      element.setPoints.flatMap((id, place) =>
        Object.hasOwn(setPoints, id)
          ? []
          : [
              {
                path: ['elements', index, 'setPoints', place],
                message: `«${id}» is no set point of content/plants/${data.plant}.yaml; allowed: ${allowed}`,
              },
            ],
      ),
    )
    for (const problem of [...netAndModelProblems(data, setPoints), ...unknown]) {
      context.addIssue({ code: 'custom', path: problem.path, message: problem.message })
    }
  })

/** What is wrong with the net of lines; only a whole net can be drawn and read into the model. */
function netAndModelProblems(
  data: CircuitData & DrawnCircuit,
  setPoints: SetPoints,
): readonly CircuitProblem[] {
  const net = circuitProblems(data, portNames)
  if (net.length > 0) return net
  const reading = readCircuit({ circuit: data, setPoints, fuels: fuelsOf() })
  return [...drawingProblems(data), ...(reading.ok ? [] : reading.problems)]
}
