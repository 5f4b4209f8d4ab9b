// Runs before the first paint, so that a page never flashes in the wrong theme, size or units.
// The allowed values stand in components/settings/preferences.ts too; a test holds the two together.
;(() => {
  const allowed = {
    units: ['si', 'us', 'mixed'],
    theme: ['device', 'light', 'dark'],
    'text-size': ['normal', 'large', 'largest'],
  }
  for (const [name, values] of Object.entries(allowed)) {
    let kept = null
    try {
      kept = localStorage.getItem(`clear-return:${name}`)
    } catch {
      return
    }
    if (values.includes(kept)) document.documentElement.setAttribute(`data-${name}`, kept)
  }
})()
