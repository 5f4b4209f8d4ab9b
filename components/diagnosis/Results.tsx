import { CautionLinks } from '../exercise/CautionLinks.tsx'
import { shownRows, type Row } from './rows.ts'
import { LITTLE, percentText, shareInWords, speaks, timesInWords } from './shares.ts'
import type { FinderShared } from './shared.ts'
import type { Reckoned } from './reckoner.ts'
import type { FoundGroup, FoundReason } from './types.ts'
import { answerInWords, askedInWords, stateInWords, titleOf } from './words.ts'

interface Props extends FinderShared {
  status: Reckoned['status']
  again: () => void
  /** Brings the field of a question into sight. */
  show: (key: string) => void
}

const LOADING =
  'The model’s results are on their way. You can answer already; the causes show as soon as they are there.'
const FAILED =
  'The part of this page that ranks the causes could not be loaded. Your answers stay, and the address keeps them.'

/** Causes in order with their shares. */
export function Results({ status, again, show, ...shared }: Props) {
  const { offer, found, next, htmlId } = shared
  const rows = found === undefined ? [] : shownRows(offer, found)
  return (
    <section class="found-causes" aria-labelledby={`${htmlId}-causes`} data-status={status}>
      <h2 id={`${htmlId}-causes`} tabIndex={-1}>
        Causes in order
      </h2>
      {status === 'failed' && (
        <div class="finder-failed" role="alert">
          <p>{FAILED}</p>
          <button type="button" onClick={again}>
            Try again
          </button>
        </div>
      )}
      {found === undefined ? (
        status === 'failed' ? null : (
          <p class="finder-loading">{LOADING}</p>
        )
      ) : (
        <>
          {next?.doNotRun !== undefined && (
            <p class="do-not-run">
              <strong>{next.doNotRun}</strong>
            </p>
          )}
          <p class="finder-verdict">{found.verdict}</p>
          <LookAgain
            {...shared}
            title="Cannot be right"
            keys={found.doubts.map(({ key }) => key)}
            show={show}
          />
          <LookAgain {...shared} title="Look again at" keys={found.unexplained} show={show} />
          <ol class="cause-rows">
            {rows
              .filter(({ ranked }) => ranked)
              .map((row) => (
                <li key={row.id}>
                  {row.group === undefined ? (
                    <div class="cause-row cause-head">
                      <RowHead row={row} />
                    </div>
                  ) : (
                    <Cause row={row} {...shared} />
                  )}
                </li>
              ))}
          </ol>
          <ul class="cause-ends">
            {rows
              .filter(({ ranked }) => !ranked)
              .map(({ id, words, percent }) => (
                <li key={id}>
                  {words}: <strong>{percentText(percent)}</strong>
                </li>
              ))}
          </ul>
          {found.pairs.length > 0 && (
            <div class="two-together">
              <p>Two at once, already counted above by half in each:</p>
              <ul>
                {found.pairs.map(({ faults, share }) => (
                  <li key={faults.join()}>
                    {faults.map((fault) => titleOf(offer, fault)).join(' and ')}:{' '}
                    {percentText(Math.round(share * 100))}
                  </li>
                ))}
              </ul>
            </div>
          )}
        </>
      )}
    </section>
  )
}

interface LookAgainProps extends FinderShared, Pick<Props, 'show'> {
  title: string
  keys: readonly string[]
}

/** What is to be looked at again, with the way to its field. */
function LookAgain({ offer, asked, specs, state, title, keys, show }: LookAgainProps) {
  const doubted = keys.flatMap((key) => asked.get(key) ?? [])
  if (doubted.length === 0) return null
  return (
    <div class="doubts">
      <p>{title}:</p>
      <ul>
        {doubted.map((one) => (
          <li key={one.key}>
            <span>
              {askedInWords(offer, one)}: {answerInWords(specs, state, one)}
            </span>
            <button type="button" onClick={() => show(one.key)}>
              Go to it
            </button>
          </li>
        ))}
      </ul>
    </div>
  )
}

function RowHead({ row }: { row: Row }) {
  return (
    <>
      <span class="cause-words">
        {row.words}
        {row.alike.length > 0 && <span class="cause-alike">or {row.alike.join('; or ')}</span>}
      </span>
      <span class="cause-share">
        {percentText(row.percent)} <span class="share-words">{shareInWords(row.share)}</span>
      </span>
      <svg class="share-bar" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
        <rect class="share-all" width="100" height="4" />
        <rect class="share-part" width={100 * row.share} height="4" />
      </svg>
    </>
  )
}

function Cause({ row, ...shared }: { row: Row } & FinderShared) {
  const { offer } = shared
  const { group } = row
  if (group === undefined) return null
  const causes = group.causes.flatMap(({ fault }) => offer.causes.filter(({ id }) => id === fault))
  const tells = group.reasons.filter(({ weight }) => Math.abs(weight) >= LITTLE)
  return (
    <details class="cause-row">
      <summary class="cause-head">
        <RowHead row={row} />
      </summary>
      <div class="cause-body">
        {causes.length > 1 && <Twins group={group} {...shared} />}
        <Reasons title="Speaks for it" reasons={tells.filter(({ weight }) => weight > 0)} {...shared} />
        <Reasons title="Speaks against it" reasons={tells.filter(({ weight }) => weight < 0)} {...shared} />
        {tells.length < group.reasons.length && (
          <p class="says-little">
            Says little either way:{' '}
            {group.reasons
              .filter(({ weight }) => Math.abs(weight) < LITTLE)
              .map(({ label }) => label)
              .join('; ')}
            .
          </p>
        )}
        {causes.map(({ id, title, confirm, cautions, procedure }) => (
          <div key={id} class="cause-way">
            {causes.length > 1 && <h3>{title}</h3>}
            <CautionLinks cautions={cautions} href={offer.cautionsHref} />
            <p>
              <strong>To confirm:</strong> {confirm}
            </p>
            <p class="cause-links">
              <a href={procedure.href}>{procedure.title}</a>
              <a href={`${offer.benchHref}?v=1&fault.${id}=0.7`}>
                Show on the bench<span class="unseen">: {title}</span>
              </a>
            </p>
          </div>
        ))}
      </div>
    </details>
  )
}

/** Causes that share one place, with what tells them apart. */
function Twins({ group, offer }: { group: FoundGroup } & FinderShared) {
  const { causes, separating, apartIn } = group
  const checks = offer.checks
    .filter(({ id }) => separating.includes(id))
    .map(({ label }) => label.toLowerCase())
  const states = apartIn.map((state) => stateInWords(offer.states[state].title))
  return (
    <div class="twins">
      <p>
        {`${apartIn.length > 0 ? 'Where you looked, no' : 'No'} glass and no gauge tells these ${causes.length} apart, so they share one place:`}
      </p>
      <ul>
        {causes.map(({ fault, share }) => (
          <li key={fault}>
            {titleOf(offer, fault)}: {percentText(Math.round(share * 100))}
          </li>
        ))}
      </ul>
      {states.length > 0 && (
        <p>Glasses and gauges tell some of them apart at another time: {states.join('; ')}.</p>
      )}
      {checks.length > 0 && <p>What tells them apart: {checks.join('; ')}.</p>}
    </div>
  )
}

interface ReasonsProps extends FinderShared {
  title: string
  reasons: readonly FoundReason[]
}

function Reasons({ title, reasons, asked, specs, state }: ReasonsProps) {
  if (reasons.length === 0) return null
  return (
    <div class="reasons">
      <h3>{title}</h3>
      <ul>
        {reasons.map(({ key, label, weight }) => {
          const one = asked.get(key)
          const answer = one === undefined ? '' : answerInWords(specs, state, one)
          return (
            <li key={key}>
              <strong>{label}:</strong> {answer}{' '}
              <span class="reason-weight">{`It ${speaks(weight)}: ${timesInWords(weight)}.`}</span>
            </li>
          )
        })}
      </ul>
    </div>
  )
}
