/** The public face of the ranking of causes: what was observed in, causes with shares and the next check out. */
export { diagnose, type Diagnosis } from './diagnose.ts'
export type { Doubt } from './doubts.ts'
export type { RankedGroup } from './groups.ts'
export { highestOf } from './highest.ts'
export type { Item } from './items.ts'
export type { NextCheck, ProposedCheck } from './next-check.ts'
export { packSignatures, unpackSignatures, type PackedSignatures } from './packed.ts'
export type { Hypothesis, RankedCause, Ranking } from './rank.ts'
export { reasonsOf, type Reason } from './reasons.ts'
export { computeSignatures, type SignatureSource } from './signatures.ts'
export { tellables, type Tellable } from './tellables.ts'
export type {
  Knowledge,
  KnownCheck,
  KnownFault,
  KnownStates,
  Observable,
  Observation,
  Signatures,
  Told,
  Weights,
} from './types.ts'
