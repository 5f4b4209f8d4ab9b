/** Path of an installed Chromium, or undefined. */
export function findChromium(): string | undefined
/** Installs Chromium when there is none. Throws with what to do when that fails. */
export function ensureChromium(): void
