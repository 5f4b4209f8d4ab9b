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
        <legend>Colour of the lines</legend>
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
      {scale && (
        <div class="colour-scale">
          <svg viewBox="0 0 350 34" width="350" height="34" role="img" aria-label={scaleWords(colouring, scale)}>
            {Array.from({ length: SHADES }, (_, shade) => (
              <g key={shade} class={shadeClass(shade)}>
                <rect class="colour-swatch" x={10 + shade * 28} y="1" width="28" height="14" />
              </g>
            ))}
            {scale.borders.map((border, index) =>
              index % 2 === 0 ? (
                <g key={index}>
                  <path class="colour-tick" d={`M${10 + index * 28} 15V19`} />
                  <text class="colour-number" x={10 + index * 28} y="31">
                    {border}
                  </text>
                </g>
              ) : null,
            )}
            <text class="colour-unit" x="308" y="31">
              {scale.unit.trim()}
            </text>
          </svg>
          {scale.below && (
            <span class="colour-below">
              <svg viewBox="0 0 30 14" width="30" height="14" aria-hidden="true">
                <g class={shadeClass('below')}>
                  <path class="circuit-line circuit-casing" d="M0 7H30" />
                  <path class="circuit-line circuit-line-suction" d="M0 7H30" />
                </g>
              </svg>
              {scale.below}
            </span>
          )}
        </div>
      )}
    </div>
  )
}

function scaleWords(colouring: Colouring, { borders, unit }: Scale): string {
  return `${names[colouring]} from dark to light: ${borders[0]} to ${borders.at(-1)}${unit} in ${SHADES} even steps, the last for all that is above`
}
