import type { Remark } from '../../../calculators/circuit/types.ts'
import { Sign } from '../../calculator/Sign.tsx'

const grades = { note: 'information', attention: 'caution', stop: 'action' } as const
const words = { note: 'Note', attention: 'Attention', stop: 'Stop' } as const

/** What the state brings with it and no instrument shows. */
export function Remarks({ remarks }: { remarks: readonly Remark[] }) {
  if (remarks.length === 0) return null
  return (
    <ul class="remarks">
      {remarks.map(({ grade, text }) => (
        <li key={text} class={`remark remark-${grade}`}>
          <Sign grade={grades[grade]} />
          <span>
            <strong>{words[grade]}:</strong> {text}
          </span>
        </li>
      ))}
    </ul>
  )
}
