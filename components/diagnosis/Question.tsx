import type { ComponentChildren } from 'preact'
import { formatIn } from '../../calculators/quantity/format.ts'
import type { KindId } from '../../calculators/quantity/types.ts'
import { fromSI } from '../../calculators/quantity/units.ts'
import { Field } from '../calculator/Field.tsx'
import type { Action } from '../calculator/state.ts'
import type { FinderShared } from './shared.ts'
import { fieldId, type Asked } from './keys.ts'
import { GlassPicture } from './GlassPicture.tsx'
import { accuracyInWords, askedInWords } from './words.ts'

interface Props extends FinderShared {
  /** Start of the ids; a question can stand in two places at once. */
  place: string
  one: Asked
  /** Told when a choice has been made: a field is never done. */
  chosen?: () => void
}

/** One question: buttons where one chooses what one saw, a field where a gauge is read. */
export function Question(props: Props) {
  return props.one.question.kind === undefined ? <Choice {...props} /> : <Gauge {...props} />
}

/** The values as buttons. The one that is pressed, pressed again, is taken back: not looked at. */
function Choice({ place, one, offer, state, send, chosen }: Props) {
  const { key, question } = one
  const id = fieldId(place, key)
  const now = state.said[key]
  return (
    <fieldset class="question" id={id} tabIndex={-1}>
      <legend class="question-label">
        {askedInWords(offer, one)}
        {now === undefined && <span class="not-looked">not looked at</span>}
      </legend>
      <ul class="choices">
        {Object.entries(question.values ?? {}).map(([value, words]) => (
          <li key={value}>
            <ChoiceButton {...{ value, said: now, question: key, send, chosen }}>
              <GlassPicture value={value} id={`${id}-${value}`} />
              <span>{words}</span>
            </ChoiceButton>
          </li>
        ))}
      </ul>
    </fieldset>
  )
}

interface ChoiceButtonProps extends Pick<Props, 'send'> {
  /** Key of the question. */
  question: string
  value: string
  said: string | undefined
  chosen: Props['chosen'] | undefined
  children: ComponentChildren
}

/** Pressed again it takes the answer back. */
function ChoiceButton({ question, value, said, send, chosen, children }: ChoiceButtonProps) {
  return (
    <button
      type="button"
      class="choice-button"
      aria-pressed={value === said}
      onClick={() => {
        send({ type: 'say', key: question, value: value === said ? undefined : value })
        if (value !== said) chosen?.()
      }}
    >
      {children}
    </button>
  )
}

type InWordsProps = Pick<Props, 'one' | 'offer' | 'send'> & { chosen: Props['chosen'] | undefined } & {
  said: string | undefined
}

/** For who did not note the figure: a word for the gauge. */
function InWords({ one, offer, said, send, chosen }: InWordsProps) {
  const { key, question } = one
  const words = Object.entries(question.values ?? {})
  if (words.length === 0) return null
  return (
    <ul class="in-words" aria-label={`${askedInWords(offer, one)}, without a figure`}>
      {words.map(([value, text]) => (
        <li key={value}>
          <ChoiceButton {...{ value, said, question: key, send, chosen }}>
            {text.replace(/ than usual\.$|\.$/, '')}
          </ChoiceButton>
        </li>
      ))}
    </ul>
  )
}

/** Three digits of it are enough for what hangs on the weather. */
const limitText = (limit: number, kind: KindId, unit: string): string =>
  formatIn(limit, kind, unit, { digits: 3 })

function Gauge({ place, one, offer, specs, state, send, found, chosen }: Props) {
  const { key, question } = one
  const [spec, field] = [specs[key], state.gauges.fields[key]]
  if (spec === undefined || field === undefined) return null
  const named = { ...spec, label: askedInWords(offer, one) }
  const { reading, text } = field
  const refused = reading !== 'waiting' && !reading.ok && text.trim() !== '' ? reading : undefined
  const doubt = found?.doubts.find((candidate) => candidate.key === key)
  const change = (action: Action): void => send({ type: 'gauge', action })
  const perhaps = doubt?.perhaps
  return (
    <div class={doubt ? 'question gauge gauge-in-doubt' : 'question gauge'}>
      <Field
        htmlId={fieldId(place, key)}
        spec={named}
        field={field}
        help={accuracyInWords(question, state)}
        problem={refused && { label: named.label, read: text, ...refused }}
        send={change}
      />
      <InWords one={one} offer={offer} said={state.said[key]} send={send} chosen={chosen} />
      {doubt && (
        <div class="doubt" role="alert">
          <p>
            {doubt.says}
            {doubt.limit !== undefined &&
              ` The limit is about ${limitText(doubt.limit, spec.kind, field.unit)}.`}{' '}
            The order of the causes leaves it out until it is right.
          </p>
          {perhaps && (
            <button
              type="button"
              onClick={() =>
                change({
                  type: 'type',
                  field: key,
                  text: String(Number(fromSI(perhaps.value, field.unit, spec.kind).toPrecision(4))),
                })
              }
            >
              {`It is ${formatIn(perhaps.value, spec.kind, field.unit)}: ${perhaps.because}`}
            </button>
          )}
          {doubt.mayStand && (
            <button type="button" onClick={() => send({ type: 'sure', key })}>
              It is right as it stands
            </button>
          )}
          <button type="button" onClick={() => change({ type: 'type', field: key, text: '' })}>
            Take it out
          </button>
        </div>
      )}
    </div>
  )
}
