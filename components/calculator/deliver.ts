/** Puts a text on the clipboard. False when the browser refuses, as it does without a secure connection. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text)
    return true
  } catch {
    return false
  }
}

/** Hands a text to the browser as a file to keep. */
export function download(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  document.body.append(link)
  link.click()
  link.remove()
  // The browser reads the file after this call has returned.
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
