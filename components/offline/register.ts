import { Workbox } from 'workbox-window'

/**
 * Keeps the offline edition and tells the person when a newer one waits. The new edition takes over only when
 * the person asks for it, so that a page and its files always come from one edition.
 */
function keepOfflineEdition(notice: HTMLElement): void {
  const base = notice.dataset['base'] ?? '/'
  const message = notice.querySelector('[data-message]')
  const button = notice.querySelector('button')
  if (!message || !button) return
  const say = (text: string, offerReload: boolean) => {
    message.textContent = text
    button.hidden = !offerReload
    notice.hidden = false
  }

  const workbox = new Workbox(`${base}sw.js`, { scope: base })
  workbox.addEventListener('waiting', () => {
    say('A new edition of this handbook is ready.', true)
    button.addEventListener('click', () => {
      workbox.addEventListener('controlling', () => location.reload())
      workbox.messageSkipWaiting()
    })
  })
  workbox.addEventListener('redundant', () => {
    if (!navigator.serviceWorker.controller) {
      say('The offline copy could not be kept on this device. The pages work while you are connected.', false)
    }
  })
  // Some shops serve the handbook from a plain file server, where a browser allows no service worker.
  workbox.register().catch(() => undefined)
}

const notice = document.querySelector<HTMLElement>('[data-offline-notice]')
if (notice && import.meta.env.PROD && 'serviceWorker' in navigator) keepOfflineEdition(notice)
