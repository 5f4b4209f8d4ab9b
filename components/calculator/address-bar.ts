/** Puts the query into the page's address without a new entry in the history, if it says anything new. */
export function showInAddress(query: string): void {
  if (query === new URLSearchParams(location.search).toString()) return
  const search = query === '' ? '' : `?${query}`
  history.replaceState(history.state, '', `${location.pathname}${search}${location.hash}`)
}
