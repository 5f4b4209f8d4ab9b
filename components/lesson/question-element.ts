import type { KindId } from '../../calculators/quantity/types.ts'
import { preferencesEvent } from '../settings/preferences.ts'
import { unitSystem } from '../settings/unit-system.ts'
import { questionKey, type Answered, type Outcome } from './progress.ts'
import { deviceShelf, keepAnswer, keptAnswers, today } from './store.ts'

const all = <E extends Element>(root: ParentNode, selector: string): E[] => [
  ...root.querySelectorAll<E>(selector),
]

/** What became of an answer: right, wrong with the reasons that now stand, or nothing that could be judged. */
type Judged =
  | { readonly verdict: 'right' }
  | { readonly verdict: 'wrong'; readonly say: string; readonly reasons: readonly HTMLDetailsElement[] }
  | { readonly verdict: 'none'; readonly say: string }

/**
 * A question that stands in the page with all its reasons folded away, as it is read without JavaScript. Here the
 * reasons are hidden until they are earned, and the first answer is kept on the device.
 */
class LessonQuestion extends HTMLElement {
  connectedCallback(): void {
    for (const part of all<HTMLElement>(this, '[data-live]')) part.hidden = false
    this.#fold()
    this.#form?.addEventListener('submit', (event) => {
      event.preventDefault()
      void this.#check()
    })
    this.querySelector('[data-show]')?.addEventListener('click', () => this.#end('shown'))
    this.querySelector('[data-again]')?.addEventListener('click', () => this.#again())
    this.#tellKept()
    this.#hintUnit()
    document.addEventListener(preferencesEvent, this.#hintUnit)
  }

  disconnectedCallback(): void {
    document.removeEventListener(preferencesEvent, this.#hintUnit)
  }

  get #form(): HTMLFormElement | null {
    return this.querySelector('form')
  }

  get #figure(): HTMLElement | null {
    return this.querySelector('[data-figure-answer]')
  }

  get #reasons(): HTMLDetailsElement[] {
    return all(this, '.reason')
  }

  readonly #hintUnit = (): void => {
    const hint = this.querySelector('[data-unit-hint]')
    if (hint === null) return
    void this.#unit().then((unit) => {
      hint.textContent = unit === undefined ? '' : `, in ${unit.symbol} or with its unit`
    })
  }

  /** The unit in which a plain number is meant, loaded when a question asks for one. */
  async #unit() {
    const { kind = '', unit = '' } = this.#figure?.dataset ?? {}
    const { unitFor } = await import('./entered-figure.ts')
    return unitFor(kind as KindId, unitSystem(), unit)
  }

  async #check(): Promise<void> {
    const judged = this.#figure === null ? this.#judgeChoices() : await this.#judgeFigure(this.#figure)
    if (judged.verdict === 'none') this.#say(judged.say)
    else if (judged.verdict === 'right') this.#end('right')
    else {
      this.#keep('wrong')
      this.#say(judged.say)
      for (const reason of judged.reasons) unfold(reason)
    }
  }

  #judgeChoices(): Judged {
    const choices = all<HTMLElement>(this, '[data-choice]').map((element) => ({
      chosen: element.querySelector('input')?.checked === true,
      right: 'right' in element.dataset,
      reason: element.querySelector<HTMLDetailsElement>('.reason'),
    }))
    if (choices.every(({ chosen }) => !chosen)) return { verdict: 'none', say: 'Choose an answer first.' }
    const wrong = choices.filter(({ chosen, right }) => chosen && !right)
    const missed = choices.filter(({ chosen, right }) => !chosen && right).length
    if (wrong.length + missed === 0) return { verdict: 'right' }
    const reasons = wrong.flatMap(({ reason }) => reason ?? [])
    if (choices.filter(({ right }) => right).length === 1)
      return { verdict: 'wrong', say: 'Not this one. The reason stands under it. Choose again.', reasons }
    const told = [
      ...(wrong.length > 0
        ? [`${wrong.length} of those chosen ${wrong.length === 1 ? 'is' : 'are'} wrong`]
        : []),
      ...(missed > 0 ? [`${missed} right ${missed === 1 ? 'one is' : 'ones are'} missing`] : []),
    ]
    return { verdict: 'wrong', say: `Not yet: ${told.join(', ')}.`, reasons }
  }

  async #judgeFigure(figure: HTMLElement): Promise<Judged> {
    const { kind = '', unit = '', si = '', within = '' } = figure.dataset
    const { enteredFigure } = await import('./entered-figure.ts')
    const typed = figure.querySelector('input')?.value ?? ''
    const reading = await enteredFigure(typed, kind as KindId, unitSystem(), unit)
    if (!reading.ok)
      return { verdict: 'none', say: `Your answer: ${reading.reason}. Accepted: ${reading.accepted}.` }
    if (near(reading.si, si, within)) return { verdict: 'right' }
    const slip = all<HTMLElement>(figure, '[data-slip]').find(({ dataset }) =>
      near(reading.si, dataset['si'], within),
    )
    const reason = slip?.querySelector<HTMLDetailsElement>('.reason')
    return {
      verdict: 'wrong',
      say: reason
        ? 'Not this figure. What went wrong stands above. Try again.'
        : 'Not this figure. Try again.',
      reasons: reason ? [reason] : [],
    }
  }

  #end(outcome: 'right' | 'shown'): void {
    const firstTry = this.#keep(outcome)
    for (const reason of this.#reasons) unfold(reason)
    this.dataset['ended'] = ''
    this.#hideButtons(true)
    if (outcome === 'shown') this.#say('The answer stands above, with all reasons.')
    else this.#say(firstTry ? 'Right, at the first try.' : 'Right.', true)
    this.querySelector<HTMLElement>('[data-again]')?.focus()
  }

  #again(): void {
    this.#form?.reset()
    delete this.dataset['ended']
    this.#fold()
    this.#hideButtons(false)
    this.#say('')
    this.querySelector<HTMLElement>('input')?.focus()
  }

  #fold(): void {
    for (const reason of this.#reasons) {
      reason.open = false
      reason.hidden = true
    }
  }

  #hideButtons(ended: boolean): void {
    for (const button of all<HTMLElement>(this, '.question-buttons button'))
      button.hidden = ended !== 'again' in button.dataset
  }

  #say(words: string, right = false): void {
    const verdict = this.querySelector('.verdict')
    if (verdict === null) return
    verdict.textContent = words
    verdict.classList.toggle('verdict-right', right)
  }

  /** Keeps the answer. Returns whether it is the first one to this question. */
  #keep(outcome: Outcome): boolean {
    const { lesson = '', question = '' } = this.dataset
    const before = this.#kept()
    const problem = keepAnswer(deviceShelf(), questionKey(lesson, question), outcome, today())
    const note = this.querySelector('.kept-note')
    if (problem !== '') {
      if (note !== null) note.textContent = problem
      return false
    }
    this.#tellKept()
    return before === undefined
  }

  #kept(): Answered | undefined {
    const kept = keptAnswers(deviceShelf())
    const { lesson = '', question = '' } = this.dataset
    return kept.ok ? kept.answers[questionKey(lesson, question)] : undefined
  }

  #tellKept(): void {
    const answered = this.#kept()
    const note = this.querySelector('.kept-note')
    if (note !== null && answered !== undefined)
      note.textContent = `Kept on this device: ${inWords(answered)}.`
  }
}

function inWords({ first, on, right }: Answered): string {
  if (first === 'right') return `right at the first try, ${on}`
  const how = first === 'shown' ? 'the answer was shown' : 'not right at the first try'
  return right === undefined ? `${how}, ${on}` : `${how}, ${on}; right on ${right}`
}

function near(value: number, wanted: string | undefined, within: string): boolean {
  // The last digit of a converted figure must not decide.
  return Math.abs(value - Number(wanted)) <= Number(within) * (1 + 1e-9)
}

function unfold(reason: HTMLDetailsElement): void {
  reason.hidden = false
  reason.open = true
}

if (customElements.get('lesson-question') === undefined)
  customElements.define('lesson-question', LessonQuestion)
