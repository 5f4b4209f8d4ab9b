import { afterEach, expect, test, vi } from 'vitest'
import { mdxPages } from '../../../components/content/mdx-pages.ts'
import { mdxProblems } from '../../../components/content/mdx-problems.ts'

const problemsIn = (text: string) => mdxProblems([{ path: 'content/circuit/page.mdx', text }])

afterEach(() => {
  vi.unstubAllEnvs()
})

// The build itself refuses these: components/build/check-articles.ts.
test.each([
  ['<Setpoint of="none" />', '<Setpoint of>: «none»', 'header-pressure'],
  ["<SetPointTable of={['header-pressure', 'none']} />", '<SetPointTable of>: «none»', 'tank-volume'],
  ['<Caution id="none" />', '<Caution id>: «none»', 'fuel-on-skin'],
  ['<Cite of="none" />', '<Cite of>: «none»', 'astm-d341'],
  ['<Cite of="en-590" />', "<Cite of>: «en-590» is not among the sources of the page's", 'iso-3104'],
  ['<Quantity value="2 mm" kind="none" memory />', '<Quantity kind>: «none»', 'kinematicViscosity'],
  ['<Quantity value="2 mm" kind="length" source="none" />', '<Quantity source>: «none»', 'astm-d341'],
  ['<Quantity value="2 mm" kind="length" />', '<Quantity>: «2 mm» has 0 origins', 'example'],
  ['<Quantity value="2 mm" kind="length" memory practice />', '<Quantity>: «2 mm» has 2 origins', 'example'],
  ['<Calculator id="none" />', '<Calculator id>: «none»', 'density-and-volume'],
  ['<Calculator id="density-and-volume" fuel="none" />', '<Calculator fuel>: «none»', 'summer-gas-oil'],
  [
    '<Calculator id="density-and-volume" preset={{ none: \'1 L\' }} />',
    '<Calculator preset>: «none» is not an input of density-and-volume',
    'volumeTemperature',
  ],
  [
    '<Calculator id="density-and-volume" setPoints={{ volume: \'none\' }} />',
    '<Calculator setPoints>: «none»',
    'tank-volume',
  ],
  [
    '<Claim state="full" fault="none" reading="power" is="lower">a b</Claim>',
    '<Claim>: fault: «none»',
    'pump-worn',
  ],
  ['<GlassSigns of={["none"]} />', '<GlassSigns of>: «none»', 'injector-passes-gas'],
  ['<GlassSigns circuit="none" of={["glass-dirty"]} />', '<GlassSigns circuit>: «none»', 'pq-12'],
  [
    '<PageLink to="circuit/none#x">a</PageLink>',
    '<PageLink to>: «circuit/none»',
    'calculators/unit-converter',
  ],
])('%s is refused', async (tag, problem, allowed) => {
  const found = await problemsIn(`---\nsources: [iso-3104]\n---\n\nWords ${tag}.`)
  expect(found).toHaveLength(1)
  expect(found[0]).toContain(`content/circuit/page.mdx:5: ${problem}`)
  expect(found[0]).toMatch(new RegExp(`; allowed: .*${allowed}`))
})

test('all that is wrong is told at once, and what is right is not', async () => {
  const right = '<PageLink to="circuit/the-circuit#the-return-side">a</PageLink>'
  expect(await problemsIn(`${right} <Setpoint of="a" />\n<Caution id="b" />`)).toHaveLength(2)
})

test('a plant with a circuit of its own borrows the articles’ set points, and has its own', async () => {
  vi.stubEnv('PLANT', 'pb-8')
  expect(
    await problemsIn('<Setpoint of="bypass-valve-cracking" /> <Setpoint of="injection-viscosity" />'),
  ).toEqual([])
  expect(await problemsIn('<Setpoint of="feed-pump-ratio" />')).toHaveLength(1)
  vi.stubEnv('PLANT', 'pq-12')
  expect(await problemsIn('<Setpoint of="injection-viscosity" />')).toHaveLength(1)
})

const problems = await mdxProblems()

test.each(mdxPages())('$path: every id is one that exists', ({ path }) => {
  expect(problems.filter((problem) => problem.startsWith(`${path}:`))).toEqual([])
})
