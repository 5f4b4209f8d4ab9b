/** The fuel in an element, as its law needs it. */
export interface Liquid {
  /** [kg/m³], above 0 */
  readonly density: number
  /** [m²/s], above 0 */
  readonly kinematicViscosity: number
}
