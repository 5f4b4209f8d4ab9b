import { useEffect, useState } from 'preact/hooks'
import type { UnitSystem } from '../../../calculators/quantity/types.ts'
import { preferencesEvent } from '../../settings/preferences.ts'
import { unitSystem } from '../../settings/unit-system.ts'

/** The unit system that the person has set; SI where the page is built. */
export function useUnits(live: boolean): UnitSystem {
  const [system, follow] = useState<UnitSystem>('si')
  useEffect(() => {
    if (!live) return
    const read = () => follow(unitSystem())
    read()
    document.addEventListener(preferencesEvent, read)
    return () => document.removeEventListener(preferencesEvent, read)
  }, [live])
  return system
}
