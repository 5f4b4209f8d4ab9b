import type { Answer } from './answer.ts'
import type { Engine } from './engine.ts'
import { keysOf, replaceKeepingFocus } from './keys.ts'
import { MAXIMUM_QUERY_LENGTH } from './query.ts'
import { allPages, element, resultsOf, statusOf } from './render.ts'

/** Rest in typing after which the search begins. */
const DEBOUNCE_MILLISECONDS = 80

/** Wait after which the person is told that the search is on its way. */
const PATIENCE_MILLISECONDS = 250

/** Letters below which too much would be found. */
const SHORTEST_QUERY = 2

const NOT_LOADED = 'The search could not be loaded: there is no connection, or the site has no index.'

let engine: Promise<Engine> | undefined

/** The index is fetched once for all fields of a page, when somebody first uses one; a failure is tried again. */
function loadedEngine(): Promise<Engine> {
  engine ??= import('./engine.ts').then((module) => module.loadEngine())
  engine.catch(() => (engine = undefined))
  return engine
}

/** Makes a `SearchField` answer as one types. */
export function setUpSearch(root: HTMLElement): void {
  const form = one(root, 'form', HTMLFormElement)
  const field = one(root, 'input', HTMLInputElement)
  const status = one(root, '.search-status', HTMLElement)
  const results = one(root, '.search-results', HTMLElement)
  const keepsAddress = root.hasAttribute('data-keeps-address')

  let asked = ''
  let answer: Promise<Answer | undefined> = Promise.resolve(undefined)
  let timer: number | undefined

  /** Asks for what stands in the field now, unless that has been asked already. */
  function ask(): void {
    window.clearTimeout(timer)
    const query = field.value.trim()
    if (query === asked) return
    asked = query
    if (keepsAddress) keepInAddress(query)
    if (query.length < SHORTEST_QUERY) {
      answer = Promise.resolve(undefined)
      show(query, [], [])
      return
    }
    answer = answerFor(query)
  }

  async function answerFor(query: string): Promise<Answer | undefined> {
    const patience = window.setTimeout(
      () => query === asked && (status.textContent = 'Searching …'),
      PATIENCE_MILLISECONDS,
    )
    try {
      const loaded = await loadedEngine()
      const found = await loaded.answer(query)
      if (query !== asked) return undefined
      const actions = { more: loaded.more, search: (word: string) => replace(word) }
      show(query, statusOf(found), resultsOf(found, field.id, actions))
      return found
    } catch {
      if (query !== asked) return undefined
      show('', [element('p', undefined, NOT_LOADED)], [allPages()])
      asked = ''
      return undefined
    } finally {
      window.clearTimeout(patience)
    }
  }

  /** Shows what answers a query, and says in the results which: they may be those of a query before the one typed. */
  function show(query: string, messages: HTMLElement[], elements: HTMLElement[]): void {
    status.replaceChildren(...messages)
    replaceKeepingFocus(results, elements, field)
    results.dataset['query'] = query
  }

  function replace(text: string): void {
    field.value = text
    field.focus()
    ask()
  }

  /** Opens the first result; one that stands for other words than those typed is first shown. */
  async function openFirst(): Promise<void> {
    const seen = field.value.trim() === results.dataset['query']
    ask()
    const found = await answer
    const first = results.querySelector('a')
    if (!found || !first) return
    const asTyped = found.mended.length === 0 && found.unknown.length === 0 && !found.partial
    if (found.count > 0 && (seen || asTyped)) first.click()
    else first.focus()
  }

  // A field that merely has the focus when the page opens fetches nothing.
  const warmUp = () => void loadedEngine().catch(() => undefined)
  field.addEventListener('keydown', warmUp, { once: true })
  field.addEventListener('pointerdown', warmUp, { once: true })
  field.addEventListener('input', () => {
    window.clearTimeout(timer)
    timer = window.setTimeout(ask, DEBOUNCE_MILLISECONDS)
  })
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    void openFirst()
  })
  root.addEventListener('keydown', (event) => keysOf(event, field, results, () => replace('')))

  // What was typed stays when one comes back; the address says so also where the browser does not.
  if (keepsAddress) field.value ||= queryOfAddress()
  if (field.value !== '') ask()
  window.addEventListener('pageshow', ask)
  root.dataset['ready'] = 'true'
}

/** Whoever pressed Enter before the search was ready was sent to the list of all pages: it finds there what was typed. */
export function searchForSent(root: HTMLElement, dialog: HTMLDialogElement): void {
  const field = one(root, 'input', HTMLInputElement)
  const sent = queryOfAddress()
  if (sent === '' || field.value !== '') return
  dialog.showModal()
  field.value = sent
  field.focus()
  field.dispatchEvent(new Event('input'))
}

function queryOfAddress(): string {
  return (new URLSearchParams(location.search).get('q') ?? '').slice(0, MAXIMUM_QUERY_LENGTH)
}

function keepInAddress(query: string): void {
  const address = new URL(location.href)
  if (query === '') address.searchParams.delete('q')
  else address.searchParams.set('q', query.slice(0, MAXIMUM_QUERY_LENGTH))
  if (address.href !== location.href) history.replaceState(history.state, '', address)
}

function one<Type extends HTMLElement>(root: HTMLElement, selector: string, type: new () => Type): Type {
  const found = root.querySelector(selector)
  if (!(found instanceof type)) throw new Error(`the search field lacks its ${selector}`)
  return found
}
