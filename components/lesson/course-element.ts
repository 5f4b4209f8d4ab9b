import type { LessonFacts } from './load-lessons.ts'
import { tallyOf } from './progress.ts'
import { deviceShelf, keptAnswers } from './store.ts'

/** The list of the lessons with what this device has kept of each. */
class LessonCourse extends HTMLElement {
  connectedCallback(): void {
    this.#tell()
    // Another page of this site may write while this one is open, or be left by the way back.
    window.addEventListener('storage', this.#tell)
    window.addEventListener('pageshow', this.#tell)
  }

  disconnectedCallback(): void {
    window.removeEventListener('storage', this.#tell)
    window.removeEventListener('pageshow', this.#tell)
  }

  readonly #tell = (): void => {
    const kept = keptAnswers(deviceShelf())
    const note = this.querySelector('[data-unreadable]')
    if (note !== null)
      note.textContent = kept.ok
        ? ''
        : `What this device has kept of the course cannot be read: ${kept.reason}.`
    if (!kept.ok) return
    for (const { id, questions } of JSON.parse(this.dataset['lessons'] ?? '[]') as LessonFacts[]) {
      const { of, answered, atFirst } = tallyOf(kept.answers, id, questions)
      const status = this.querySelector(`[data-status="${id}"]`)
      if (status !== null)
        status.textContent =
          answered === 0 ? '' : `${answered} of ${of} answered, ${atFirst} right at the first try`
    }
  }
}

if (customElements.get('lesson-course') === undefined) customElements.define('lesson-course', LessonCourse)
