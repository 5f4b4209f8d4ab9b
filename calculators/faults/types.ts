/** How one number goes from health to the fault as the severity goes from 0 to 1. */
export type Course =
  /** health + severity × (to − health); 'to' is a figure with its unit. */
  | { readonly to: string }
  /** health × times^severity; for a resistance that grows by tens. */
  | { readonly times: number }

/** What a fault does at one place. */
export type Bend =
  | (Course & {
      readonly part: string
      readonly parameter: string
      /** Which cylinders, 1 upward; absent where the parameter is not each cylinder's own. */
      readonly cylinders?: readonly number[] | 'all'
    })
  | (Course & { readonly condition: 'tankLevel' | 'tankTemperature' | 'thinned' | 'water' })
  /** Another fuel altogether, from severity 0.5 on. */
  | { readonly condition: 'fuel'; readonly to: string }

/** A fault as its data gives it: what of it the model needs. */
export interface FaultData {
  readonly id: string
  readonly title: string
  /** What it does in each circuit in which it can happen, by the circuit's id. */
  readonly bends: Readonly<Record<string, readonly Bend[]>>
  /** Likelihood before anything was seen: an editorial estimate. */
  readonly frequency: 'common' | 'occasional' | 'rare'
}
