import { useEffect, useState } from 'preact/hooks'
import { printEvent } from './print-event.ts'

/**
 * The value as it was when it last stayed the same for so long.
 * @param onPaper whether it is brought up to date at once when the page is printed
 */
export function useSettled<T>(value: T, milliseconds: number, onPaper = false): T {
  const [settled, settle] = useState(value)
  useEffect(() => {
    const follow = () => settle(() => value)
    const timer = setTimeout(follow, milliseconds)
    if (onPaper) document.addEventListener(printEvent, follow)
    return () => {
      clearTimeout(timer)
      document.removeEventListener(printEvent, follow)
    }
  }, [value, milliseconds, onPaper])
  return settled
}
