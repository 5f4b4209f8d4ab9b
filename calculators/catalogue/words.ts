import { formatIn } from '../quantity/format.ts'
import { kindOf } from '../quantity/kinds.ts'
import type { KindId } from '../quantity/types.ts'

/** A value in a sentence of a notice or refusal, in the handbook's SI trade units: '4.41 mm²/s'. */
export function inWords(si: number, kind: KindId): string {
  return formatIn(si, kind, kindOf(kind).preferred.si)
}
