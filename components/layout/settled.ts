import { useEffect, useState } from 'preact/hooks'

/** The value as it was when it last stayed the same for so long. */
export function useSettled<T>(value: T, milliseconds: number): T {
  const [settled, settle] = useState(value)
  useEffect(() => {
    const timer = setTimeout(() => settle(() => value), milliseconds)
    return () => clearTimeout(timer)
  }, [value, milliseconds])
  return settled
}
