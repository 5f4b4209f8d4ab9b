/** What a person can set, and the values of each; the first is the one without a choice. */
export const preferences = {
  units: {
    label: 'Units',
    values: [
      { value: 'si', label: 'SI', note: 'kPa, °C, L/min, mm²/s' },
      { value: 'us', label: 'US', note: 'psi, °F, US gal/min' },
      { value: 'mixed', label: 'Mixed', note: 'SI with psi, inHg and US gallons' },
    ],
  },
  theme: {
    label: 'Light or dark',
    values: [
      { value: 'device', label: 'As the device', note: '' },
      { value: 'light', label: 'Light', note: '' },
      { value: 'dark', label: 'Dark', note: '' },
    ],
  },
  'text-size': {
    label: 'Text size',
    values: [
      { value: 'normal', label: 'Normal', note: '' },
      { value: 'large', label: 'Large', note: '' },
      { value: 'largest', label: 'Largest', note: '' },
    ],
  },
} as const

export type PreferenceName = keyof typeof preferences

/** Name of the event on document that tells the page's live parts that a preference has changed. */
export const preferencesEvent = 'clear-return:preferences'

/** Key under which a preference is kept on the device. */
export const storageKey = (name: PreferenceName) => `clear-return:${name}`
