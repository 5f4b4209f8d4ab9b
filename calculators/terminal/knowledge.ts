import { createHash } from 'node:crypto'
import { globSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { readCircuit } from '../circuit/read-model.ts'
import { highestOf } from '../diagnosis/highest.ts'
import { packSignatures, unpackSignatures, type PackedSignatures } from '../diagnosis/packed.ts'
import { computeSignatures, type SignatureSource } from '../diagnosis/signatures.ts'
import type { Knowledge } from '../diagnosis/types.ts'
import { allChecks, allFaults, allFuels, circuitFile, diagnosisFile, plantFile } from './content.ts'
import { RefusedInput } from './read-inputs.ts'

const PROJECT = join(import.meta.dirname, '..', '..')
const KEPT_IN = join(PROJECT, 'node_modules', '.cache', 'clear-return')

/** All that signatures hang on: the model's code and the data. */
const HANG_ON =
  'calculators/{checks,circuit,engine,faults,fuel,heat,hydraulics,quantity}/**/*.ts calculators/diagnosis/{glass-value,packed,signatures}.ts content/{checks,circuits,faults,fuels,plants}/*.yaml'

function fingerprint(): string {
  const hash = createHash('sha256')
  for (const pattern of HANG_ON.split(' '))
    for (const file of globSync(pattern, { cwd: PROJECT }).sort())
      hash.update(file).update(readFileSync(join(PROJECT, file)))
  return hash.digest('hex').slice(0, 16)
}

/** A circuit with what its signatures are computed from. */
export function signatureSource(circuit: string): SignatureSource {
  const file = circuitFile(circuit)
  const { setPoints } = plantFile(file.plant)
  const reading = readCircuit({ circuit: file, setPoints, fuels: allFuels() })
  if (!reading.ok) {
    const [first] = reading.problems
    throw new RefusedInput(
      `circuits/${circuit}`,
      `${first?.path.join('.')}: ${first?.message}`,
      'a circuit without problems',
    )
  }
  return { circuit, model: reading.model, setPoints, faults: allFaults(), checks: allChecks() }
}

/** Signatures as they were computed the last time with the same code and data, or computed now and kept. */
export function packedSignaturesOf(circuit: string): PackedSignatures {
  const path = join(KEPT_IN, `${circuit}-${fingerprint()}.json`)
  try {
    return JSON.parse(readFileSync(path, 'utf8')) as PackedSignatures
  } catch {
    const packed = packSignatures(computeSignatures(signatureSource(circuit)))
    try {
      mkdirSync(KEPT_IN, { recursive: true })
      // Another process may read it at this moment.
      writeFileSync(`${path}.${process.pid}`, JSON.stringify(packed))
      renameSync(`${path}.${process.pid}`, path)
    } catch {
      // Where nothing can be kept they are computed each time.
    }
    return packed
  }
}

/** All that a ranking of a circuit's causes rests on; with signatures as a page has them, so that both say the same. */
export function knowledgeOf(circuit: string): Knowledge {
  const diagnosis = diagnosisFile()
  return {
    signatures: unpackSignatures(packedSignaturesOf(circuit)),
    faults: allFaults(),
    checks: allChecks(),
    ...diagnosis,
    highest: highestOf(circuit, diagnosis.observables, plantFile(circuitFile(circuit).plant).setPoints),
  }
}
