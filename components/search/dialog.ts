/** Opens the search with Ctrl+K or ⌘K: the dialog where there is one, else the page's own field. */
export function setUpShortcut(): void {
  const dialog = document.querySelector<HTMLDialogElement>('dialog.search-dialog')
  const field = document.querySelector<HTMLInputElement>('[data-search] input')

  function open(): void {
    if (dialog && !dialog.open) dialog.showModal()
    field?.focus()
    field?.select()
  }

  document.addEventListener('keydown', (event) => {
    const isShortcut = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey
    if (!isShortcut || event.key.toLowerCase() !== 'k') return
    event.preventDefault()
    open()
  })

  if (!dialog) return
  document.querySelector('.search-button')?.addEventListener('click', open)
  dialog.querySelector('.search-close')?.addEventListener('click', () => dialog.close())
  dialog.addEventListener('click', (event) => {
    // A click on the dialog itself is one beside what it holds; a result may lead to a place on the same page.
    const target = event.target as Element
    if (target === dialog || target.closest('a')) dialog.close()
  })
}
