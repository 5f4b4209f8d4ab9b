import { preferences, preferencesEvent, storageKey, type PreferenceName } from './preferences.ts'

const root = document.documentElement
const panel = document.querySelector<HTMLElement>('[data-settings]')

for (const name of Object.keys(preferences) as PreferenceName[]) {
  const current = root.getAttribute(`data-${name}`) ?? preferences[name].values[0].value
  const radio = panel?.querySelector<HTMLInputElement>(`input[name="${name}"][value="${current}"]`)
  if (radio) radio.checked = true
}

panel?.addEventListener('change', (event) => {
  const field = event.target
  if (!(field instanceof HTMLInputElement) || !(field.name in preferences)) return
  const name = field.name as PreferenceName
  root.setAttribute(`data-${name}`, field.value)
  const kept = keep(name, field.value)
  const outcome = panel.querySelector('[role="status"]')
  if (outcome) {
    outcome.textContent = kept
      ? ''
      : 'This browser keeps nothing for this site: the choice holds for this page only.'
  }
  document.dispatchEvent(new CustomEvent(preferencesEvent, { detail: { name, value: field.value } }))
})

function keep(name: PreferenceName, value: string): boolean {
  try {
    localStorage.setItem(storageKey(name), value)
    return true
  } catch {
    return false
  }
}
