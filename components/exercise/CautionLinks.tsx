import type { CautionLine } from './types.ts'

/** Cautions with their signal words, each leading to its full text. */
export function CautionLinks({ cautions, href }: { cautions: readonly CautionLine[]; href: string }) {
  return (
    <ul class="caution-lines">
      {cautions.map(({ id, signal, title }) => (
        <li key={id}>
          <strong class={`signal-word signal-${signal.toLowerCase()}`}>{signal}</strong>{' '}
          <a href={`${href}#${id}`}>{title}</a>
        </li>
      ))}
    </ul>
  )
}
