import { describe, expect, it } from 'vitest'
import { answerOf } from '../../../calculators/terminal/compute.ts'
import { describeCalculator } from '../../../calculators/terminal/describe.ts'
import { tube } from '../calculator/tube.ts'

const ask = (input: unknown) => answerOf(tube, typeof input === 'string' ? input : JSON.stringify(input))

interface Printed {
  readonly json: { readonly outputs: Readonly<Record<string, { value: unknown; uncertainty?: number }>> }
}

it('reads what a shell puts a byte order mark before', async () => {
  expect(await ask('\ufeff{}')).toEqual(await ask('{}'))
  expect(await ask('{}')).toHaveProperty('json')
})

describe('what is refused', () => {
  it.each([
    ['', '', 'Standard input is empty'],
    ['{', '', '«{» is not JSON'],
    ['nonsense', '', '«nonsense» is not JSON'],
    ['[]', '', 'Standard input holds an array'],
    ['null', '', 'Standard input holds null'],
    ['5', '', 'Standard input holds a number'],
    ['{"wing":1}', 'wing', '«wing» is not an input of tube'],
    ['{"constructor":1}', 'constructor', '«constructor» is not an input of tube'],
    ['{"__proto__":{"flow":1}}', '__proto__', '«__proto__» is not an input of tube'],
    ['{"flow":null}', 'flow', 'Flow is null'],
    ['{"flow":true}', 'flow', 'Flow is a boolean'],
    ['{"flow":[1]}', 'flow', 'Flow is an array'],
    ['{"flow":1e999}', 'flow', 'Flow is not a finite number'],
    ['{"flow":"5 kPa"}', 'flow', 'Flow: «5 kPa» is a pressure'],
    ['{"flow":"1.234,5 L/min"}', 'flow', 'Flow: «1.234,5» has both a comma and a point'],
    ['{"flow":-1}', 'flow', 'below'],
    ['{"form":1}', 'form', 'Form is a number'],
    ['{"form":"square"}', 'form', 'Form is «square»'],
    ['{"readings":"x"}', 'readings', 'Readings is a string'],
    ['{"readings":[5]}', 'readings', 'Readings, row 1 is a number'],
    ['{"readings":[{}]}', 'readings', 'Readings, row 1 has no time'],
    ['{"readings":[{"time":1,"mood":2}]}', 'readings', 'Readings, row 1: «mood» is not a column'],
    ['{"readings":[{"time":"1 kg"}]}', 'readings', 'Readings, row 1: Time: «1 kg» is a mass'],
    ['{"accuracies":5}', 'accuracies', 'accuracies is a number'],
    ['{"accuracies":{"wing":5}}', 'accuracies', '«wing» is not a quantity among the inputs'],
    ['{"accuracies":{"form":5}}', 'accuracies', '«form» is not a quantity among the inputs'],
    [
      '{"accuracies":{"diameter":"5 kPa"}}',
      'accuracies',
      'The accuracy of Inside diameter: «5 kPa» is a pressure',
    ],
    [
      '{"accuracies":{"diameter":-1}}',
      'diameter',
      'The accuracy of Inside diameter is not a number of zero or more',
    ],
    ['{"accuracies":{"diameter":"150 %"}}', 'accuracies', '«150 %» is more than the whole value'],
    ['{"accuracies":{"diameter":1e308}}', 'diameter', 'wider than the whole range of possible values'],
  ])('%s', async (text, field, reason) => {
    const answer = await ask(text)
    expect(answer).toMatchObject({ refusal: { field, reason: expect.stringContaining(reason) } })
    expect('refusal' in answer && answer.refusal.accepted).not.toBe('')
  })
})

describe('what is answered', () => {
  it('numbers in SI, texts with units, arithmetic, choices and tables alike', async () => {
    const plain = await ask({
      form: 'round',
      diameter: 0.0127,
      flow: 0.0001,
      readings: [{ time: 30 }, { time: 45 }],
    })
    const typed = await ask({
      form: 'round',
      diameter: '1/2 in',
      flow: '6 L/min',
      readings: [{ time: '0,5 min' }, { time: '30 s + 15 s' }],
    })
    expect(typed).toEqual(plain)
    expect(plain).toMatchObject({
      json: {
        outputs: {
          speed: { unit: '1', uncertaintyMethod: expect.any(String) },
          sum: { value: 75, unit: 's' },
          verdict: { value: 'slow' },
        },
        steps: [{ label: 'Area', unit: 'm2' }],
        notices: [{ grade: 'information', text: 'Plain arithmetic.' }],
      },
    })
  })

  it('accuracies in SI, with a unit, or as a share of the value', async () => {
    const spread = async (accuracy: unknown) => {
      const answer = (await ask({ diameter: 0.1, accuracies: { diameter: accuracy } })) as Printed
      return answer.json.outputs['speed']?.uncertainty
    }
    expect(await spread(0.002)).toBeCloseTo((await spread('2 %')) ?? 0, 9)
    expect(await spread('2 mm')).toBeCloseTo((await spread(0.002)) ?? 0, 12)
    expect(await spread(0)).toBeNull()
  })

  it('describes inputs and outputs with their units and ranges', () => {
    const described = JSON.parse(JSON.stringify(describeCalculator(tube))) as Record<string, unknown>
    expect(described).toMatchObject({
      id: 'tube',
      defaults: { form: 'round', flow: 0.001 },
      inputs: [
        {
          id: 'form',
          type: 'choice',
          default: 'round',
          options: [{ value: 'round' }, { value: 'measured' }],
        },
        {
          id: 'diameter',
          kind: 'length',
          unit: 'm',
          units: ['mm', 'in'],
          physical: { minimum: 0.001, maximum: 1 },
        },
        { id: 'area', when: { input: 'form', oneOf: ['measured'] } },
        { id: 'flow', default: 0.001 },
        { id: 'readings', columns: [{ id: 'time', unit: 's' }], rows: { minimum: 1, maximum: 3 } },
      ],
      outputs: [
        { id: 'speed', unit: '1' },
        { id: 'sum' },
        { id: 'verdict', options: { slow: {}, fast: {} } },
      ],
    })
  })
})
