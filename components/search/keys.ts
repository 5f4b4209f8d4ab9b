/**
 * Moves through the results by the keyboard. Field and results are one column: down and up step through it, Home
 * and End go to its ends, Escape leads from a result back to the field and empties a field that holds something.
 * Whoever types on while on a result goes on typing in the field.
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
  if (at < 0) return

  if (event.key === 'Escape') {
    // An empty field leaves the key to the dialog around it, which closes.
    if (inField && field.value === '') return
    if (inField) clear()
    else field.focus()
    event.preventDefault()
    return
  }
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
