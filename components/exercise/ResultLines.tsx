import type { ResultLine } from '../../calculators/checks/describe.ts'

/** What a check told, line by line. */
export function ResultLines({ lines }: { lines: readonly ResultLine[] }) {
  return (
    <ul class="result-lines">
      {lines.map(({ label, text }) => (
        <li key={label + text}>
          {label !== '' && <span class="result-label">{label}: </span>}
          <strong>{text}</strong>
        </li>
      ))}
    </ul>
  )
}
