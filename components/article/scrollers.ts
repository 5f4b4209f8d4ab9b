// A table that goes on to the right fades there: a phone shows no bar until one scrolls.

function look(box: HTMLElement): void {
  box.toggleAttribute('data-goes-on', box.scrollWidth - box.clientWidth - box.scrollLeft > 1)
}

const resized = new ResizeObserver((entries) => {
  for (const box of new Set(entries.map(({ target }) => target.closest<HTMLElement>('.scroller'))))
    if (box) look(box)
})

for (const box of document.querySelectorAll<HTMLElement>('.scroller')) {
  box.addEventListener('scroll', () => look(box), { passive: true })
  resized.observe(box)
  // Other units make the table wider, and not its box.
  if (box.firstElementChild) resized.observe(box.firstElementChild)
}
