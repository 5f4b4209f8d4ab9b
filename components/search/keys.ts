/**
 * Moves through the results by the keyboard. Field and results are one column: down and up step through it, Home
 * and End go to its ends, Escape leads from anywhere in the search back to the field and empties a field that holds
 * something. Whoever types on while on a result goes on typing in the field.
 */
export function keysOf(
  event: KeyboardEvent,
  field: HTMLInputElement,
  results: HTMLElement,
  clear: () => void,
): void {
  if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return
  const stops: HTMLElement[] = [field, ...results.querySelectorAll<HTMLElement>('a, button')]
  const at = stops.findIndex((stop) => stop === document.activeElement)
  const inField = at === 0

  if (event.key === 'Escape') {
    // An empty field leaves the key to the dialog around it, which closes.
    if (inField && field.value === '') return
    if (inField) clear()
    else field.focus()
    event.preventDefault()
    return
  }
  if (at < 0) return
  const types = event.key === 'Backspace' || (event.key.length === 1 && event.key !== ' ')
  if (!inField && types) return field.focus()
  const next = {
    ArrowDown: stops[at + 1],
    ArrowUp: stops[at - 1],
    Home: inField ? undefined : stops[1],
    End: inField ? undefined : stops.at(-1),
  }[event.key]
  if (next === undefined) return
  next.focus()
  event.preventDefault()
}

/**
 * Puts new results in the place of old ones. An answer may come while somebody already walks the results before it:
 * the focus then goes to the same page among the new ones, else to the field, never to nowhere.
 */
export function replaceKeepingFocus(results: HTMLElement, elements: HTMLElement[], field: HTMLElement): void {
  const held = document.activeElement
  const hadFocus = held !== null && results.contains(held)
  results.replaceChildren(...elements)
  if (!hadFocus) return
  const page = held instanceof HTMLElement ? held.dataset['page'] : undefined
  const links = [...results.querySelectorAll('a')]
  const again = page === undefined ? undefined : links.find((link) => link.dataset['page'] === page)
  ;(again ?? field).focus()
}
