import type { ChoiceInput } from '../../calculators/calculator/types.ts'
import type { Action } from './state.ts'

interface Props {
  htmlId: string
  id: string
  input: ChoiceInput
  value: string
  send: (action: Action) => void
}

/** More options than this are shorter to read in a list that folds. */
const MOST_RADIOS = 4

export function Choice({ htmlId, id, input, value, send }: Props) {
  const helpId = `${htmlId}-help`
  const help = (
    <p class="field-help" id={helpId}>
      {input.help}
    </p>
  )
  const choose = (chosen: string) => send({ type: 'choose', input: id, value: chosen })
  if (input.options.length > MOST_RADIOS) {
    return (
      <div class="field">
        <label for={htmlId}>{input.label}</label>
        <select
          id={htmlId}
          name={id}
          aria-describedby={helpId}
          value={value}
          onChange={(event) => choose(event.currentTarget.value)}
        >
          {input.options.map((option) => (
            <option key={option.value} value={option.value} selected={option.value === value}>
              {option.label}
            </option>
          ))}
        </select>
        {help}
      </div>
    )
  }
  return (
    <fieldset class="choice" aria-describedby={helpId}>
      <legend>{input.label}</legend>
      {help}
      <div class="choice-options">
        {input.options.map((option) => (
          <label key={option.value} class="choice-option">
            <input
              type="radio"
              name={`${htmlId}-options`}
              value={option.value}
              checked={option.value === value}
              onChange={() => choose(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
