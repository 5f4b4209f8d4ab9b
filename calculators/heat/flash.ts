/** EN 590 asks for a flash point above this, so gas oil may flash from here on. [K] @source en-590 */
export const LOWEST_FLASH = 328.15
