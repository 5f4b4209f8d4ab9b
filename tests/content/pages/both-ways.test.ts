import { describe, expect, test } from 'vitest'
import { entriesOf, yamlFile, type Fault, type Procedure, type Symptom } from './content.ts'

const procedures = entriesOf<Procedure>('procedures')
const symptoms = entriesOf<Symptom>('symptoms')
const faults = entriesOf<Fault & { readonly cautions: readonly string[] }>('faults')

const cautions = yamlFile<{ readonly signal: string }>('cautions/cautions.yaml')
const isGrave = (id: string) => cautions[id]?.signal === 'DANGER'

/** Work that is done by the calendar and mends no fault: no symptom leads to it. */
const ROUTINE: Readonly<Record<string, string>> = {
  'daily-inspection': 'before each shift',
  'scheduled-service-in-order': 'by hours',
}

const used = new Set([
  ...faults.map(({ data }) => data.procedure),
  ...symptoms.flatMap(({ data }) => data.firstChecks.flatMap(({ procedure }) => procedure ?? [])),
])

test('each procedure mends a fault, is a first check of a symptom, or is routine work', () => {
  expect(procedures.filter(({ id }) => !used.has(id)).map(({ id }) => id)).toEqual(
    Object.keys(ROUTINE).sort(),
  )
})

describe.each(faults)('fault $id', ({ id, data }) => {
  test('stands on a symptom page with the procedure that mends it', () => {
    const pages = symptoms.filter((symptom) => symptom.data.causes.some(({ fault }) => fault === id))
    expect(pages.length).toBeGreaterThan(0)
    expect(procedures.map((procedure) => procedure.id)).toContain(data.procedure)
  })

  test('names its cautions, and its procedure has those that are grave', () => {
    expect(data.cautions.length).toBeGreaterThan(0)
    const way = procedures.find((procedure) => procedure.id === data.procedure)?.data.cautions ?? []
    expect(data.cautions.filter((caution) => isGrave(caution) && !way.includes(caution))).toEqual([])
  })
})
