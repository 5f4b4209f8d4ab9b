/** A hole or crack through a wall, as the fuel meets it. */
export interface SmallOpening {
  /** [m²] */
  readonly area: number
  /** Creeping flow: pressure over viscosity and flow. [1/m³] */
  readonly resistance: number
}

/**
 * A round hole. Its resistance to creeping flow is that of an opening in a thin wall (Sampson) plus that of a pipe of
 * the wall's thickness: 24/d³ + 128L/(πd⁴).
 * @param diameter [m], above 0
 * @param wall thickness of the wall [m], 0 or more
 * @returns area [m²] and resistance [1/m³]
 * @source sampson-1891, hagen-poiseuille
 */
export function roundHole(diameter: number, wall: number): SmallOpening {
  return {
    area: (Math.PI / 4) * diameter ** 2,
    resistance: 24 / diameter ** 3 + (128 * wall) / (Math.PI * diameter ** 4),
  }
}

/**
 * A straight crack or a gap: creeping flow between two walls, 12·t/(w·h³).
 * @param gap distance of the two walls [m], above 0 and small beside the length
 * @param length of the crack along the surface [m], above 0
 * @param wall way of the fuel through it [m], above 0
 * @returns area [m²] and resistance [1/m³]
 * @source hagen-poiseuille (between plane walls)
 */
export function narrowGap(gap: number, length: number, wall: number): SmallOpening {
  return { area: gap * length, resistance: (12 * wall) / (length * gap ** 3) }
}

export interface OpeningFlow {
  /** [m³/s] */
  readonly flow: number
  /** Share of the pressure that viscosity takes; near 1 the leak goes with pressure, near 0 with its root. [-] */
  readonly viscousShare: number
}

/**
 * Liquid through a small opening: Δp = resistance·μ·Q + ρ/2·(Q/(C·A))². The first term rules in pinholes and cold fuel,
 * the second in larger holes.
 * @param opening area [m²] and resistance [1/m³], from roundHole or narrowGap
 * @param coefficient of discharge in fast flow [-], above 0 to 1
 * @param pressure difference across the wall [Pa], 0 or more
 * @param dynamicViscosity [Pa·s]
 * @param density [kg/m³], above 0
 * @returns the flow and the share of viscosity in the drop; exact in both limits, a smooth passage between them
 * @source sampson-1891, hagen-poiseuille, common practice (adding the two drops)
 */
export function openingFlow(
  opening: SmallOpening,
  coefficient: number,
  pressure: number,
  dynamicViscosity: number,
  density: number,
): OpeningFlow {
  const linear = opening.resistance * dynamicViscosity
  const quadratic = density / (2 * (coefficient * opening.area) ** 2)
  if (pressure <= 0) return { flow: 0, viscousShare: 1 }
  const flow = (2 * pressure) / (linear + Math.sqrt(linear * linear + 4 * quadratic * pressure))
  return { flow, viscousShare: (linear * flow) / pressure }
}
