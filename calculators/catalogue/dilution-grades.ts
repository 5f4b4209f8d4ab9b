import type { VerdictOutput } from '../calculator/types.ts'

/** Shares of fuel in oil at which a training course of the United States Navy sets its grades. [-] @source navy-oil-tests */
export const DILUTION_GRADES = { faulty: 0.02, serious: 0.05 } as const

export const dilutionVerdict = {
  type: 'verdict',
  label: 'Action',
  options: {
    cannotBeTold: { label: 'Cannot be told by this test: use another one', grade: 'caution' },
    usual: { label: 'No more fuel than is usual: keep the trend', grade: 'good' },
    faulty: {
      label: 'Look for the leak: a jumper line, an injector or its seals',
      grade: 'caution',
    },
    serious: {
      label: 'Stop, find the leak and change the oil before the engine runs on',
      grade: 'action',
    },
  },
} as const satisfies VerdictOutput

export type DilutionGrade = keyof (typeof dilutionVerdict)['options']

/** The grade of a share of fuel in the oil [-]; a test that shows no fall at all proves nothing either way. */
export function dilutionGrade(share: number): DilutionGrade {
  if (!(share > 0)) return 'cannotBeTold'
  if (share > DILUTION_GRADES.serious) return 'serious'
  return share > DILUTION_GRADES.faulty ? 'faulty' : 'usual'
}
