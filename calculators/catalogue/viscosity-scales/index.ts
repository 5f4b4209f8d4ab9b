import { defineCalculator } from '../../calculator/define-calculator.ts'
import cases from './cases.json' with { type: 'json' }
import { compute } from './compute.ts'
import { inputs } from './inputs.ts'

const seconds = { type: 'quantity', kind: 'time', units: ['s'] } as const

export default defineCalculator({
  id: 'viscosity-scales',
  title: 'Viscosity scales',
  purpose: 'The old paper gives Saybolt, Engler or Redwood: how many mm²/s is that?',
  alsoCalled: ['SUS', 'SSU', 'Saybolt', 'Furol', 'Engler', 'Redwood', 'seconds to cSt'],
  equation: {
    tex: String.raw`t_{SUS} = \left[4.6324\,\nu + \frac{(1 + 0.03264\,\nu)\,10^5}{3930.2 + 262.7\,\nu + 23.97\,\nu^2 + 1.646\,\nu^3}\right]\left[1 + 0.000061\,(t - 100)\right]`,
    words:
      'Saybolt Universal seconds are about 4.63 times the viscosity in mm²/s, and more for thin liquids, with a small factor for a temperature t in °F other than 100. The other scales have equations of their own, shown in the working.',
  },
  sources: ['astm-d2161', 'redwood-equations', 'hydraulic-institute-scales', 'herschel-1917'],
  validity:
    'Liquids without slip or yield. Saybolt Universal from 1.81 mm²/s, Furol from 48 mm²/s at 122 or 210 °F, Engler from 1.35 °E, Redwood No. 1 from 34 s. The Universal relation and the Redwood equations were seen; both Furol equations, the Engler equations and the factor for temperature are from memory. Where the printed table of the Hydraulic Institute differs from these equations: Redwood by 2 to 5 %, Engler by up to 3.5 % from 7 mm²/s on, Saybolt by 2 to 5 % above 100 mm²/s, where that table rounds. It converts a value at one temperature and never from one temperature to another.',
  inputs,
  outputs: {
    kinematicViscosity: {
      type: 'quantity',
      label: 'Kinematic viscosity',
      symbol: 'ν',
      kind: 'kinematicViscosity',
    },
    universal: { ...seconds, label: 'Saybolt Universal seconds', symbol: 'SUS' },
    furol: { ...seconds, label: 'Saybolt Furol seconds', symbol: 'SFS' },
    engler: { type: 'quantity', label: 'Engler degrees', symbol: '°E', kind: 'ratio', units: ['1'] },
    redwood: { ...seconds, label: 'Redwood No. 1 seconds', symbol: 'R1' },
  },
  compute,
  cases,
})
