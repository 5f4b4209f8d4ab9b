/**
 * The lowest flash point at which gas oil may be sold: EN 590 asks for above 55 °C, seen in public listings. [K]
 * @source en-590
 */
export const LOWEST_FLASH = 328.15
