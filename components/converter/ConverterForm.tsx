import { useEffect, useReducer, useState } from 'preact/hooks'
import { readQuantity } from '../../calculators/quantity/read.ts'
import type { UnitSystem } from '../../calculators/quantity/types.ts'
import { showInAddress } from '../calculator/address-bar.ts'
import { AddressProblems } from '../calculator/AddressProblems.tsx'
import { copyText } from '../calculator/deliver.ts'
import { useSettled } from '../layout/settled.ts'
import { unitSystem } from '../settings/unit-system.ts'
import { preferencesEvent } from '../settings/preferences.ts'
import { inOneLine } from './conversions.ts'
import type { Conversion } from './conversions.ts'
import { readAddress, writeAddress } from './converter-address.ts'
import { apply, entryKind, startState } from './converter-state.ts'
import type { ConverterAction, ConverterState, EntryName } from './converter-state.ts'
import { ConverterInputs } from './ConverterInputs.tsx'
import { ConverterResults } from './ConverterResults.tsx'

interface Props {
  /** Start of every id in the form. */
  htmlId: string
  /** Only in a browser: what was typed before the script had loaded. */
  early?: string | undefined
  live?: boolean
}

const ADDRESS_PAUSE_MS = 400
const ENTRIES: readonly EntryName[] = ['value', 'barometer']
const notLoaded = {
  ok: false,
  reason: 'the part of the page that reads expressions could not be loaded',
  accepted: 'a plain number, or a number with one unit',
} as const

export function ConverterForm({ htmlId, early, live = false }: Props) {
  const [state, send] = useReducer<ConverterState, ConverterAction, UnitSystem>(apply, 'si', startState)
  const [ready, setReady] = useState(false)
  const [problems, setProblems] = useState<readonly string[]>([])
  const [said, say] = useState('')

  useEffect(() => {
    if (!live) return
    const reading = readAddress(location.search.slice(1), unitSystem())
    send({ type: 'restore', state: reading.state })
    if (early !== undefined) send({ type: 'type', entry: 'value', text: early })
    setProblems(reading.problems)
    setReady(true)
    const follow = () => send({ type: 'follow', system: unitSystem() })
    document.addEventListener(preferencesEvent, follow)
    return () => document.removeEventListener(preferencesEvent, follow)
  }, [live, early])

  useEffect(() => {
    for (const entry of ENTRIES) {
      const of = state[entry]
      if (of.reading !== 'waiting') continue
      readQuantity(of.text, entryKind(state, entry), of.unit)
        .catch(() => notLoaded)
        .then((reading) => send({ type: 'read', entry, of, reading }))
    }
  }, [state])

  const settled = useSettled(state, ADDRESS_PAUSE_MS)
  useEffect(() => {
    if (ready && settled === state) showInAddress(writeAddress(state, location.search.slice(1)))
  }, [ready, state, settled])

  const copy = async (what: string, text: string) => {
    const copied = await copyText(text)
    say(copied ? `${what} copied.` : `The browser did not allow copying. To copy by hand: ${text}`)
  }
  const copyLink = () => {
    showInAddress(writeAddress(state, location.search.slice(1)))
    return copy('Link', location.href)
  }
  return (
    <>
      <AddressProblems problems={problems} />
      <div class="calculator-columns">
        <ConverterInputs htmlId={htmlId} state={state} send={send} />
        <ConverterResults
          state={state}
          ready={ready}
          copy={(conversion: Conversion) => copy(inOneLine(conversion), inOneLine(conversion))}
        />
      </div>
      <div class="calculator-actions" data-ready={ready ? 'true' : 'false'}>
        <div class="calculator-buttons">
          <button type="button" onClick={copyLink}>
            Copy link
          </button>
          <button
            type="button"
            onClick={() => {
              send({ type: 'restore', state: startState(unitSystem()) })
              say('Back to the start.')
            }}
          >
            Reset
          </button>
        </div>
        <output class="said">{said}</output>
      </div>
    </>
  )
}
