import { useDelivery } from '../calculator/use-delivery.tsx'
import { LONGEST_NOTE, OTHER } from './finder-state.ts'
import type { FinderShared } from './shared.ts'
import type { AnswerLine } from './words.ts'
import { ADVICE, SIGNED, workOrderText, type WorkOrder } from './work-order.ts'

interface Props extends FinderShared {
  /** The work order as of this moment, with the address brought up to date first. */
  order: () => WorkOrder
  startAfresh: () => void
  undo: (() => void) | undefined
}

/** What was found in the end, and the ways in which all of it leaves the page. */
export function WorkOrderSheet({ order, startAfresh, undo, ...shared }: Props) {
  const { offer, state, send, htmlId, found } = shared
  const { say, copy, told } = useDelivery()
  const inOrder = found?.groups.flatMap(({ causes }) => causes.map(({ fault }) => fault)) ?? []
  const sorted = offer.causes.toSorted((a, b) => placeIn(inOrder, a.id) - placeIn(inOrder, b.id))
  return (
    <section class="work-order-form" aria-labelledby={`${htmlId}-order`}>
      <h2 id={`${htmlId}-order`}>For the work order</h2>
      <div class="field">
        <label for={`${htmlId}-found`}>{'What was found'}</label>
        <select
          id={`${htmlId}-found`}
          value={state.found}
          onChange={({ currentTarget: { value } }) => send({ type: 'found', found: value })}
        >
          <option value="" selected={state.found === ''}>
            Still open
          </option>
          {sorted.map(({ id, title }) => (
            <option key={id} value={id} selected={state.found === id}>
              {title}
            </option>
          ))}
          <option value={OTHER} selected={state.found === OTHER}>
            Something that is not in the list
          </option>
        </select>
      </div>
      <div class="field">
        <label for={`${htmlId}-note`}>{'Note'}</label>
        <textarea
          id={`${htmlId}-note`}
          rows={2}
          maxLength={LONGEST_NOTE}
          value={state.note}
          onInput={({ currentTarget: { value } }) => send({ type: 'note', note: value })}
        />
      </div>
      <div class="calculator-buttons">
        <button type="button" onClick={() => copy('Summary', workOrderText(order()))}>
          Copy as text
        </button>
        <button
          type="button"
          onClick={() => {
            order()
            window.print()
          }}
        >
          Print
        </button>
        <button type="button" onClick={() => copy('Link', order().address)}>
          Copy link
        </button>
        <button
          type="button"
          onClick={() => {
            startAfresh()
            say('All answers are taken back.')
          }}
        >
          Start afresh
        </button>
        {undo && (
          <button
            type="button"
            onClick={() => {
              undo()
              say('Your answers are back.')
            }}
          >
            Undo
          </button>
        )}
      </div>
      {told}
    </section>
  )
}

/** Causes that were not ranked stand behind, in their own order. */
function placeIn(inOrder: readonly string[], id: string): number {
  const place = inOrder.indexOf(id)
  return place < 0 ? inOrder.length : place
}

/** The work order on paper. */
export function PrintedWorkOrder({ order }: { order: WorkOrder }) {
  const { circuit, day, from, seen, checks, verdict, doNotRun, lookAgain, causes, found, note } = order
  return (
    <div class="work-order">
      <dl class="work-order-head">
        <dt>Circuit</dt>
        <dd>{circuit}</dd>
        <dt>Date</dt>
        <dd>{day}</dd>
        {from !== '' && (
          <>
            <dt>Symptom</dt>
            <dd>{from}</dd>
          </>
        )}
      </dl>
      {doNotRun !== '' && (
        <p class="do-not-run">
          <strong>{doNotRun}</strong>
        </p>
      )}
      <Answers title="What was seen and read" lines={seen} />
      <Answers title="Checks made" lines={checks} />
      {lookAgain.length > 0 && <Answers title="To be looked at again" lines={lookAgain} />}
      <h2>Causes in order</h2>
      <p>{verdict === '' ? 'Not ranked.' : verdict}</p>
      <ol>
        {causes.map(({ words, share }) => (
          <li key={words}>
            {words}: {share}
          </li>
        ))}
      </ol>
      <h2>What was found</h2>
      <p>{found === '' ? 'Open.' : found}</p>
      {note !== '' && <p>{note}</p>}
      <p class="signature">{SIGNED}</p>
      <p class="work-order-advice">{ADVICE}</p>
    </div>
  )
}

function Answers({ title, lines }: { title: string; lines: readonly AnswerLine[] }) {
  return (
    <>
      <h2>{title}</h2>
      {lines.length === 0 ? (
        <p>Nothing.</p>
      ) : (
        <ul>
          {lines.map(({ key, label, answer }) => (
            <li key={key}>
              {label}: <strong>{answer}</strong>
            </li>
          ))}
        </ul>
      )}
    </>
  )
}
