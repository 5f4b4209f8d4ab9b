import { download } from '../calculator/deliver.ts'
import { exerciseKey } from '../exercise/progress.ts'
import type { CircuitOffer } from '../exercise/types.ts'
import { outcomeOf, type ExerciseOutcome } from './exercise-outcome.ts'
import { tallyOf, type Answers } from './progress.ts'
import { entriesFor, exercisesOn, fileText, readFile } from './progress-file.ts'
import type { RecordData } from './record-types.ts'
import { deviceShelf, keptAnswers, LESSONS_KEY, textAt, today, writeAll } from './store.ts'

const inWords = ({ end, wrongNames }: ExerciseOutcome): string => {
  if (end === 'begun') return 'begun'
  const tries = wrongNames === 0 ? '' : `, ${wrongNames} wrong ${wrongNames === 1 ? 'name' : 'names'} before`
  return `${end}${tries}`
}

/** The record: a sheet filled in from what the device has kept, and the ways to take that along or be rid of it. */
class LessonRecord extends HTMLElement {
  #before: readonly [string, string | null][] = []
  readonly #offers = new Map<string, Promise<CircuitOffer | undefined>>()

  connectedCallback(): void {
    for (const part of this.querySelectorAll<HTMLElement>('[data-live]')) part.hidden = false
    this.#put(this, '[data-today]', today())
    void this.#fill()
    window.addEventListener('storage', this.#refill)
    window.addEventListener('pageshow', this.#refill)
    this.#on('[data-print-record]', () => window.print())
    this.#on('[data-save]', () => this.#save())
    this.#on('[data-delete]', () => this.#ask(true))
    this.#on('[data-delete-not]', () => this.#ask(false))
    this.#on('[data-delete-now]', () => this.#replace(undefined, 'Deleted from this device.'))
    this.#on('[data-undo]', () => this.#undo())
    this.querySelector('[data-restore]')?.addEventListener('change', (event) => {
      if (event.target instanceof HTMLInputElement) void this.#restore(event.target)
    })
  }

  disconnectedCallback(): void {
    window.removeEventListener('storage', this.#refill)
    window.removeEventListener('pageshow', this.#refill)
  }

  readonly #refill = (): void => void this.#fill()

  get #data(): RecordData {
    return JSON.parse(this.dataset['record'] ?? '{}') as RecordData
  }

  get #numbers(): string[] {
    return this.#data.exercises.map(({ number }) => number)
  }

  #on(selector: string, act: () => void): void {
    this.querySelector(selector)?.addEventListener('click', act)
  }

  #put(root: ParentNode | null, selector: string, words: string | number): void {
    const place = root?.querySelector(selector)
    if (place) place.textContent = String(words)
  }

  async #fill(): Promise<void> {
    const kept = keptAnswers(deviceShelf())
    this.#put(
      this,
      '[data-problem]',
      kept.ok
        ? ''
        : `What this device has kept of the lessons cannot be read: ${kept.reason}. It is left as it is until it is deleted or replaced.`,
    )
    this.#fillAnswers(kept.ok ? kept.answers : {})
    await this.#fillExercises()
    this.dataset['filled'] = ''
  }

  #fillAnswers(answers: Answers): void {
    const totals = { answered: 0, atFirst: 0 }
    for (const { id, questions } of this.#data.lessons) {
      const row = this.querySelector(`tr[data-lesson="${id}"]`)
      const { answered, atFirst, missed } = tallyOf(answers, id, questions)
      this.#put(row, '[data-answered]', answered)
      this.#put(row, '[data-at-first]', atFirst)
      this.#put(row, '[data-missed]', missed.join(', '))
      totals.answered += answered
      totals.atFirst += atFirst
    }
    const foot = this.querySelector('tfoot')
    this.#put(foot, '[data-answered]', totals.answered)
    this.#put(foot, '[data-at-first]', totals.atFirst)
  }

  async #fillExercises(): Promise<void> {
    const { lessons, exercises } = this.#data
    const outcomes = new Map<string, ExerciseOutcome>()
    for (const exercise of exercises) {
      const text = textAt(deviceShelf(), exerciseKey(exercise.number))
      const offer = text === null ? undefined : await this.#offer(exercise.circuit)
      const outcome = offer && outcomeOf(text, exercise, offer)
      if (outcome) outcomes.set(exercise.number, outcome)
    }
    for (const { id, exercise } of lessons) {
      const row = this.querySelector(`tr[data-lesson="${id}"]`)
      const outcome = outcomes.get(exercise)
      this.#put(row, '[data-outcome]', outcome ? inWords(outcome) : '')
      this.#put(row, '[data-minutes]', outcome ? outcome.minutes : '')
    }
    const own = lessons.flatMap(({ exercise }) => outcomes.get(exercise) ?? [])
    const solved = own.filter(({ end }) => end === 'solved')
    const foot = this.querySelector('tfoot')
    this.#put(foot, '[data-outcome]', `${solved.length} solved`)
    this.#put(
      foot,
      '[data-minutes]',
      solved.reduce((sum, { minutes }) => sum + minutes, 0),
    )
    const others = exercises.filter(
      ({ number }) => outcomes.has(number) && lessons.every(({ exercise }) => exercise !== number),
    )
    const told = others.map(({ number, title }) => {
      const outcome = outcomes.get(number)
      return outcome ? `${number} ${title}: ${inWords(outcome)}, ${outcome.minutes} min` : number
    })
    const line = this.querySelector<HTMLElement>('[data-others]')
    if (line === null) return
    line.hidden = told.length === 0
    line.textContent = `Other exercises: ${told.join('; ')}.`
  }

  /** The checks of a circuit; asked for once, and only where an exercise on it was touched. */
  #offer(circuit: string): Promise<CircuitOffer | undefined> {
    const known = this.#offers.get(circuit)
    if (known) return known
    const asked = fetch(this.#data.sources[circuit] ?? '')
      .then((response) => (response.ok ? (response.json() as Promise<CircuitOffer>) : undefined))
      .catch(() => undefined)
      .then((offer) => {
        if (offer === undefined) {
          this.#offers.delete(circuit)
          this.#put(
            this,
            '[data-problem]',
            'The minutes of the exercises could not be loaded. Load the page again to try once more.',
          )
        }
        return offer
      })
    this.#offers.set(circuit, asked)
    return asked
  }

  #say(words: string): void {
    this.#put(this, '[data-said]', words)
  }

  #save(): void {
    const kept = keptAnswers(deviceShelf())
    if (!kept.ok) {
      // Whoever mends it by hand needs it as it is.
      download('clear-return-lessons-unread.txt', 'text/plain', textAt(deviceShelf(), LESSONS_KEY) ?? '')
      this.#say('Saved as it lies on this device, since it cannot be read.')
      return
    }
    const taken = { answers: kept.answers, exercises: exercisesOn(deviceShelf(), this.#numbers) }
    download(`clear-return-lessons-${today()}.json`, 'application/json', fileText(taken, today()))
    this.#say('Saved as a file. It holds answers and exercises, and no name.')
  }

  async #restore(field: HTMLInputElement): Promise<void> {
    const file = field.files?.[0]
    if (file === undefined) return
    const read = readFile(await file.text())
    // The same file can then be chosen once more.
    field.value = ''
    if (read.ok) this.#replace(read.taken, `Restored from ${file.name}. What was here before is replaced.`)
    else this.#say(`${file.name} is not taken: ${read.reason}. Nothing on this device has changed.`)
  }

  #replace(taken: Parameters<typeof entriesFor>[0], done: string): void {
    const entries = entriesFor(taken, this.#numbers)
    const before = entries.map(([key]): [string, string | null] => [key, textAt(deviceShelf(), key)])
    this.#ask(false)
    if (!writeAll(deviceShelf(), entries)) {
      this.#say('Not done: this browser has no room or keeps nothing. Nothing on this device has changed.')
      return
    }
    this.#before = before
    this.#undoable(true)
    this.#say(done)
    void this.#fill()
  }

  #undo(): void {
    const done = writeAll(deviceShelf(), this.#before)
    if (done) this.#undoable(false)
    this.#say(
      done
        ? 'Taken back: what was here before is here again.'
        : 'It could not be taken back: this browser has no room.',
    )
    void this.#fill()
  }

  #undoable(can: boolean): void {
    const button = this.querySelector<HTMLElement>('[data-undo]')
    if (button) button.hidden = !can
  }

  #ask(wanted: boolean): void {
    const ask = this.querySelector<HTMLElement>('[data-ask]')
    if (ask === null || ask.hidden === !wanted) return
    ask.hidden = !wanted
    const next = wanted
      ? ask.querySelector<HTMLElement>('p')
      : this.querySelector<HTMLElement>('[data-delete]')
    next?.focus()
  }
}

if (customElements.get('lesson-record') === undefined) customElements.define('lesson-record', LessonRecord)
