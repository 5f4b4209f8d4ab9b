import { printEvent } from './print-event.ts'

// A printed sheet says where it came from and when, and hides nothing that the screen folds away.
const opened = new Set<HTMLDetailsElement>()

window.addEventListener('beforeprint', () => {
  document.dispatchEvent(new CustomEvent(printEvent))
  const address = document.querySelector('[data-print-address]')
  const date = document.querySelector('[data-print-date]')
  if (address) address.textContent = location.href
  if (date) date.textContent = `Printed ${new Date().toISOString().slice(0, 10)}`
  for (const details of document.querySelectorAll<HTMLDetailsElement>('main details:not([open])')) {
    details.open = true
    opened.add(details)
  }
})

window.addEventListener('afterprint', () => {
  for (const details of opened) details.open = false
  opened.clear()
})
