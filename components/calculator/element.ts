/** Long enough that the page itself is there first. */
const IDLE_TIMEOUT_MS = 2000
/** A calculator wakes this long before it is scrolled into view. */
const NEAR = '300px'

/**
 * A calculator that was rendered at build time and comes to life in the browser: when it is about to be seen and
 * the browser has time, and at once when the person reaches for it.
 */
class CalculatorElement extends HTMLElement {
  #woken = false
  readonly #wake = (): void => {
    if (this.#woken) return
    this.#woken = true
    this.#observer.disconnect()
    import('./mount.tsx')
      .then(({ mount }) => mount(this))
      .catch(() => this.querySelector('[data-not-loaded]')?.removeAttribute('hidden'))
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

if (customElements.get('calculator-form') === undefined) {
  customElements.define('calculator-form', CalculatorElement)
}
