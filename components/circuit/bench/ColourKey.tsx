import { SHADES, type Scale } from './scale.ts'
import { shadeClass } from '../FlowLine.tsx'
import type { Colouring } from './types.ts'

interface Props {
  htmlId: string
  colouring: Colouring
  scale: Scale | undefined
  choose: (colouring: Colouring) => void
}

const names: Readonly<Record<Colouring, string>> = { pressure: 'Pressure', temperature: 'Temperature' }

/** What the colour of the lines tells, to be chosen, and the scale with its numbers. */
export function ColourKey({ htmlId, colouring, scale, choose }: Props) {
  return (
    <div class="colour-key">
      <fieldset class="colour-choice">
        <legend class="unseen">Colour of the lines</legend>
        {(Object.keys(names) as Colouring[]).map((name) => (
          <label key={name}>
            <input
              type="radio"
              name={`${htmlId}-colour`}
              value={name}
              checked={colouring === name}
              onChange={() => choose(name)}
            />
            <span>{names[name]}</span>
          </label>
        ))}
      </fieldset>
      {scale && <ScaleBar colouring={colouring} scale={scale} />}
    </div>
  )
}

const SWATCH = 28
/** The swatch for what lies below the scale stands apart, before it. */
const FIRST = 52

function ScaleBar({ colouring, scale }: { colouring: Colouring; scale: Scale }) {
  const width = FIRST + SHADES * SWATCH + 56
  return (
    <svg
      class="colour-scale"
      viewBox={`0 0 ${width} 34`}
      width={width}
      height="34"
      role="img"
      aria-label={scaleWords(colouring, scale)}
    >
      {scale.below && (
        <g class={shadeClass('below')}>
          <rect class="colour-swatch" x="10" y="1" width={SWATCH} height="14" />
          <text class="colour-number" x="24" y="31">
            below
          </text>
        </g>
      )}
      {Array.from({ length: SHADES }, (_, shade) => (
        <g key={shade} class={shadeClass(shade)}>
          <rect class="colour-swatch" x={FIRST + shade * SWATCH} y="1" width={SWATCH} height="14" />
        </g>
      ))}
      {scale.borders.map((border, index) =>
        index % 2 === 0 ? (
          <g key={border}>
            <path class="colour-tick" d={`M${FIRST + index * SWATCH} 15V19`} />
            <text class="colour-number" x={FIRST + index * SWATCH} y="31">
              {border}
            </text>
          </g>
        ) : null,
      )}
      <text class="colour-unit" x={FIRST + SHADES * SWATCH + 22} y="31">
        {scale.unit}
      </text>
    </svg>
  )
}

function scaleWords(colouring: Colouring, { borders, unit, below }: Scale): string {
  const lowest = below ? `; ${below} are drawn empty` : ''
  return `${names[colouring]} from dark to light: ${borders[0]} to ${borders.at(-1)} ${unit} in ${SHADES} even steps, the last for all that is above${lowest}`
}
