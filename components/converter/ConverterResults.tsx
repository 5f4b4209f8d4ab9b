import { kindOf } from '../../calculators/quantity/kinds.ts'
import type { KindId } from '../../calculators/quantity/types.ts'
import { conversionsOf, inOneLine, otherReference } from './conversions.ts'
import type { Conversion } from './conversions.ts'
import type { ConverterState } from './converter-state.ts'

interface Props {
  state: ConverterState
  /** False until the page's script has taken over: before that the buttons could do nothing. */
  ready: boolean
  copy: (conversion: Conversion) => void
}

/** The value in every unit of its kind, and for a pressure from the other zero too. */
export function ConverterResults({ state, ready, copy }: Props) {
  const { reading } = state.value
  const waiting = reading === 'waiting'
  const barometer = state.barometer.reading
  const other = barometer !== 'waiting' && barometer.ok ? otherReference(state.kind, barometer.si) : undefined
  return (
    <div class="calculator-found" data-waiting={waiting ? 'true' : 'false'}>
      {!waiting && reading.ok ? (
        <>
          <Units kind={state.kind} si={reading.si} heading="In every unit" ready={ready} copy={copy} />
          {other !== undefined && (
            <FromOtherZero kind={other.kind} si={reading.si + other.shift} ready={ready} copy={copy} />
          )}
        </>
      ) : (
        <p class="converter-none">{waiting ? '' : 'Nothing to convert yet: see the message at the value.'}</p>
      )}
    </div>
  )
}

interface UnitsProps {
  kind: KindId
  si: number
  ready: boolean
  copy: (conversion: Conversion) => void
}

function FromOtherZero({ kind, si, ready, copy }: UnitsProps) {
  // A gauge shows no more vacuum than there is air, and nothing lies below an absolute zero.
  if (kind === 'absolutePressure' && si < 0)
    return <p class="converter-none">That is below a perfect vacuum at this barometric pressure.</p>
  return <Units kind={kind} si={si} heading={`As ${kindOf(kind).label}`} ready={ready} copy={copy} />
}

function Units({ kind, si, heading, ready, copy }: UnitsProps & { heading: string }) {
  return (
    <table class="converter-units">
      <caption>{heading}</caption>
      <tbody>
        {conversionsOf(si, kind).map((conversion) => (
          <tr key={conversion.unit}>
            <td class="converter-number">{conversion.number}</td>
            <th scope="row">{conversion.symbol === '' ? 'as a number' : conversion.symbol}</th>
            <td class="converter-copy">
              <button
                type="button"
                disabled={!ready}
                aria-label={`Copy ${inOneLine(conversion)}`}
                onClick={() => copy(conversion)}
              >
                Copy
              </button>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
