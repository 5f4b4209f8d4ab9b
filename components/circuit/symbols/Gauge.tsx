import type { SymbolProps } from '../types.ts'

const needles = {
  pressure: 'M-7 7L4-4',
  vacuum: 'M7 7L-4-4',
  difference: 'M-7 7L4-4',
}

const tips = {
  pressure: 'M8-8L6.5 0L0-6.5Z',
  vacuum: 'M-8-8L-6.5 0L0-6.5Z',
  difference: 'M8-8L6.5 0L0-6.5Z',
}

/** A circle with a needle; a difference gauge has a line to either side, a vacuum gauge's needle points back. */
export function Gauge({ turn, of }: Pick<SymbolProps, 'turn'> & { of: keyof typeof needles }) {
  return (
    <g>
      <path class="circuit-line circuit-line-gauge" d={of === 'difference' ? 'M-22 0H22' : 'M0 0V22'} />
      <g transform={`rotate(${-turn})`}>
        <circle class="symbol-body" r="15" />
        <path class="symbol-line" d={needles[of]} />
        <path class="symbol-solid" d={tips[of]} />
      </g>
    </g>
  )
}
