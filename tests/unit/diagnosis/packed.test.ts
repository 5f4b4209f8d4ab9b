import { describe, expect, it } from 'vitest'
import { operatingStates } from '../../../calculators/circuit/types.ts'
import { packSignatures, unpackSignatures } from '../../../calculators/diagnosis/packed.ts'
import { computeSignatures } from '../../../calculators/diagnosis/signatures.ts'
import { signatureSource } from '../../../calculators/terminal/knowledge.ts'

describe.each(['pq-12', 'ps-6', 'pb-8'])('signatures of %s, packed and unpacked', (circuit) => {
  const signatures = computeSignatures(signatureSource(circuit))
  const packed = packSignatures(signatures)
  // As it comes out of a file.
  const unpacked = unpackSignatures(JSON.parse(JSON.stringify(packed)) as typeof packed)

  it('keep every look and every hand, and readings to a twentieth of the instrument’s accuracy', () => {
    expect(Object.keys(unpacked.faults)).toEqual(Object.keys(signatures.faults))
    for (const state of operatingStates) {
      expect(unpacked.states[state]).toEqual(signatures.states[state])
      for (const [fault, states] of Object.entries(signatures.faults)) {
        const other = unpacked.faults[fault]?.[state] ?? []
        expect(other).toHaveLength(states[state].length)
        states[state].forEach((shown, severity) => {
          expect(other[severity]?.glasses).toEqual(shown.glasses)
          expect(other[severity]?.felt).toEqual(shown.felt)
          expect(other[severity]?.readings).toHaveLength(shown.readings.length)
          shown.readings.forEach((value, place) => {
            const { id, accuracy } = signatures.states[state].readings[place] ?? { id: '', accuracy: 0 }
            const off = Math.abs((other[severity]?.readings[place] ?? Number.NaN) - value)
            expect(off, `${fault} ${state} ${id}`).toBeLessThanOrEqual(1.0001 * (accuracy / 20))
          })
        })
      }
    }
  })

  it('keep the rest as it was', () => {
    const { faults: _, states: __, ...rest } = signatures
    const { faults: ___, states: ____, ...other } = unpacked
    expect(other).toEqual(rest)
  })

  it('come out the same when they are packed again', () => {
    expect(packSignatures(unpacked)).toEqual(packed)
  })
})
