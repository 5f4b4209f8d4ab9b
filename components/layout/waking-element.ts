/** Long enough that the page itself is there first. */
const IDLE_TIMEOUT_MS = 2000
/** It wakes this long before it is scrolled into view. */
const NEAR = '300px'

/**
 * Defines an element that was rendered at build time and comes to life in the browser: when it is about to be seen
 * and the browser has time, and at once when the person reaches for it.
 * @param name of the element: 'calculator-form'
 * @param mount fetches the code and brings it to life
 */
export function defineWaking(name: string, mount: (element: HTMLElement) => Promise<void>): void {
  if (customElements.get(name) !== undefined) return
  class WakingElement extends HTMLElement {
    #woken = false
    readonly #wake = (): void => {
      if (this.#woken) return
      this.#woken = true
      this.#observer.disconnect()
      mount(this).catch(() => this.querySelector('[data-not-loaded]')?.removeAttribute('hidden'))
    }
    readonly #observer = new IntersectionObserver(
      (entries) => {
        if (!entries.some((entry) => entry.isIntersecting)) return
        this.#observer.disconnect()
        if ('requestIdleCallback' in window) requestIdleCallback(this.#wake, { timeout: IDLE_TIMEOUT_MS })
        else setTimeout(this.#wake, 1)
      },
      { rootMargin: NEAR },
    )

    connectedCallback(): void {
      this.addEventListener('focusin', this.#wake, { once: true })
      this.addEventListener('pointerdown', this.#wake, { once: true })
      this.#observer.observe(this)
      // The address may hold somebody's values: they are shown, and printed, without scrolling to them first.
      if (location.search !== '') this.#wake()
    }

    disconnectedCallback(): void {
      this.#observer.disconnect()
    }
  }
  customElements.define(name, WakingElement)
}
