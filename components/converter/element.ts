/** Long enough that the page itself is there first. */
const IDLE_TIMEOUT_MS = 2000

/** The converter, rendered at build time; it comes to life when the browser has time or the person reaches for it. */
class ConverterElement extends HTMLElement {
  #woken = false
  readonly #wake = (): void => {
    if (this.#woken) return
    this.#woken = true
    import('./mount.tsx')
      .then(({ mount }) => mount(this))
      .catch(() => this.querySelector('[data-not-loaded]')?.removeAttribute('hidden'))
  }

  connectedCallback(): void {
    this.addEventListener('focusin', this.#wake, { once: true })
    this.addEventListener('pointerdown', this.#wake, { once: true })
    if (location.search !== '') this.#wake()
    else if ('requestIdleCallback' in window) requestIdleCallback(this.#wake, { timeout: IDLE_TIMEOUT_MS })
    else setTimeout(this.#wake, 1)
  }
}

if (customElements.get('unit-converter') === undefined) {
  customElements.define('unit-converter', ConverterElement)
}
