import { expect, test } from 'vitest'
import { procedure, symptom } from '../../../components/content/schemas.ts'
import { entriesOf } from './content.ts'

/** What the build says of a page's front matter after a change: 'field: message'. */
function said(schema: typeof procedure | typeof symptom, collection: string, change: object): string[] {
  const [entry] = entriesOf<object>(collection)
  const { error } = schema.safeParse({ ...entry?.data, ...change })
  return (error?.issues ?? []).map((issue) => `${issue.path.join('.')}: ${issue.message}`)
}

test.each([
  ['cautions', undefined, 'this field is missing; allowed: at least one caution of .*fuel-under-pressure'],
  ['cautions', [], 'too few; allowed: at least one caution of .*fuel-under-pressure'],
  ['title', undefined, 'this field is missing; allowed: a text'],
  ['summary', undefined, 'this field is missing; allowed: a sentence that ends with a full stop'],
  ['reviewed', undefined, 'missing or not a day; allowed: a day such as 2026-11-25'],
])('a page whose %s is %o is told what is allowed', (field, value, message) => {
  for (const [schema, collection] of [
    [procedure, 'procedures'],
    [symptom, 'symptoms'],
  ] as const) {
    expect(said(schema, collection, {})).toEqual([])
    expect(said(schema, collection, { [field]: value })).toEqual([
      expect.stringMatching(new RegExp(`^${field}: ${message}`)),
    ])
  }
})

test.each(['time', 'tools', 'acceptance', 'record', 'waste'])(
  'a procedure without %s is told what is allowed',
  (field) => {
    expect(said(procedure, 'procedures', { [field]: undefined })).toEqual([
      expect.stringMatching(new RegExp(`^${field}: .*; allowed: `)),
    ])
  },
)

test('a set point of an acceptance that no plant has is refused', () => {
  expect(said(procedure, 'procedures', { acceptance: [{ what: 'Dry.', setPoints: ['none'] }] })).toEqual([
    expect.stringMatching(/^acceptance\.0\.setPoints\.0: «none» .*; allowed: .*header-pressure/),
  ])
})
