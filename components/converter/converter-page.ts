/** The converter among the calculators: it computes, but it is a page and not one of the catalogue. */
export const converterPage = {
  path: '/calculators/unit-converter/',
  title: 'Unit converter',
  summary: 'What is this in another unit? Type a value once and read it in every unit of its kind.',
  alsoCalled: [
    'convert units',
    'conversion table',
    'conversion factors',
    'psi to kPa',
    'psi to bar',
    'Fahrenheit to Celsius',
    'gallons to litres',
    'inches of mercury to kPa',
    'gauge to absolute pressure',
  ],
  sources: ['nist-sp811', 'gnu-units'],
} as const
