import { renderToString } from 'preact-render-to-string'
import { expect, it } from 'vitest'
import { Bench } from '../../../components/circuit/bench/Bench.tsx'
import { solverOf } from '../../../components/circuit/bench/solver.ts'
import { pq12 } from './bench.ts'

const REASON = 'The circuit does not come to rest at «Return header». Lessen a fault.'
const shared = { data: pq12, htmlId: 'bench', live: false }
const html = (solve: Parameters<typeof Bench>[0]['solve']): string =>
  renderToString(<Bench {...shared} solve={solve} />)

it('in health the bench shows glasses, needles and tables', () => {
  const page = html(solverOf(pq12))
  expect(page).toContain('glass-words')
  expect(page).toContain('gauge-needle')
  expect(page).toContain('class="facts"')
  expect(page).not.toContain('no-answer')
})

it('without an answer it shows the reason and nothing half filled, and keeps what was set', () => {
  const page = html(() => ({ ok: false, reason: REASON }))
  expect(page).toContain(REASON)
  for (const part of ['glass-words', 'gauge-needle', 'circuit-dashes', 'class="facts"', 'colour-swatch'])
    expect(page, part).not.toContain(part)
  expect(page).toContain('value="part"')
  expect(page).toContain('circuit-sheet')
})

it('an answer for health alone is none: there would be nothing to compare', () => {
  let times = 0
  const solve = solverOf(pq12)
  const page = html((setting) => (times++ === 0 ? { ok: false, reason: REASON } : solve(setting)))
  expect(page).toContain(REASON)
  expect(page).not.toContain('glass-words')
})
