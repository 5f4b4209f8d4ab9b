import type { GlassView } from '../../../calculators/circuit/types.ts'
import { GlassFace, WINDOW } from './GlassFace.tsx'
import { capital } from './words.ts'

interface Props {
  label: string
  now: GlassView
  health: GlassView | undefined
  htmlId: string
}

const EDGE = 6

/** A glass, large, with what it shows in words and what it shows in health. */
export function GlassPanel({ label, now, health, htmlId }: Props) {
  const changed = health !== undefined && health.words !== now.words
  const half = WINDOW + EDGE
  return (
    <figure class={changed ? 'glass-panel glass-changed' : 'glass-panel'}>
      <svg
        class="glass-picture"
        viewBox={`${-half} ${-half} ${2 * half} ${2 * half}`}
        width="112"
        height="112"
        aria-hidden="true"
      >
        <circle class="glass-bezel" r={WINDOW + 3} />
        <GlassFace view={now} id={htmlId} />
      </svg>
      <figcaption>
        <strong>{label}</strong>
        <span class="glass-words">{capital(now.words)}</span>
        <span class="glass-health">{changed ? `In health: ${health.words}` : 'As in health'}</span>
      </figcaption>
    </figure>
  )
}
