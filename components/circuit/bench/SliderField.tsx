import { useState } from 'preact/hooks'
import { formatNumber, withoutFinalZeros } from '../../../calculators/quantity/format.ts'
import { readPlain } from '../../../calculators/quantity/read.ts'
import type { KindId, UnitSystem } from '../../../calculators/quantity/types.ts'
import { unitForSystem } from '../../../calculators/quantity/kinds.ts'
import { fromSI, toSI, unitOf } from '../../../calculators/quantity/units.ts'

interface Props {
  htmlId: string
  label: string
  /** What it is the label of, for who hears it among others of its kind. */
  of?: string
  kind: KindId
  /** [SI] */
  value: number
  least: number
  most: number
  /** [unit shown] */
  step: number
  /** What else one must know of it now. */
  note?: string | undefined
  system: UnitSystem
  set: (si: number) => void
}

const DIGITS = 4

/** A slider and a number, which say the same: the one for a feeling, the other for a value. */
export function SliderField({ htmlId, label, of, kind, value, least, most, step, note, system, set }: Props) {
  const [typed, type] = useState<string>()
  const unit = kind === 'ratio' ? '%' : unitForSystem(kind, system)
  const shown = (si: number): number => fromSI(si, unit, kind)
  const asText = (si: number): string => withoutFinalZeros(formatNumber(shown(si), DIGITS))
  const take = (text: string): void => {
    const reading = readPlain(text, kind, unit)
    const si = reading.ok === true ? reading.si : Number.NaN
    // The ends of the range are taken as they are shown, rounded.
    const slack = (Math.abs(shown(most) - shown(least)) * unitOf(unit).factor) / 1e4
    if (si >= least - slack && si <= most + slack) {
      set(Math.min(most, Math.max(least, si)))
      type(undefined)
    } else type(text)
  }
  const refused = typed !== undefined
  return (
    <div class={refused ? 'slider slider-refused' : 'slider'}>
      <label for={htmlId}>
        {label}
        {of && <span class="unseen">: {of}</span>}
      </label>
      <input
        id={htmlId}
        type="range"
        min={Math.ceil(shown(least) / step - 1e-6) * step}
        max={shown(most)}
        step={step}
        value={shown(value)}
        aria-describedby={note && `${htmlId}-note`}
        aria-valuetext={`${asText(value)} ${unitOf(unit).symbol}`}
        onInput={(event) => {
          type(undefined)
          const si = toSI(Number(event.currentTarget.value), unit, kind)
          set(Math.min(most, Math.max(least, si)))
        }}
      />
      <span class="slider-number">
        <input
          type="text"
          inputMode="decimal"
          autocomplete="off"
          aria-label={`${label}${of ? `: ${of}` : ''}, in ${unitOf(unit).symbol}`}
          aria-invalid={refused}
          aria-describedby={`${htmlId}-message`}
          maxLength={12}
          value={typed ?? asText(value)}
          onChange={(event) => take(event.currentTarget.value)}
        />
        <span class="slider-unit">{unitOf(unit).symbol}</span>
      </span>
      {note && (
        <span class="slider-note" id={`${htmlId}-note`}>
          {note}
        </span>
      )}
      <span class="slider-message" id={`${htmlId}-message`} aria-live="polite">
        {refused && `Read «${typed}»; accepted: ${asText(least)} to ${asText(most)} ${unitOf(unit).symbol}.`}
      </span>
    </div>
  )
}
