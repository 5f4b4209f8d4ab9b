import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { sumsTable } from '../../tools/sums-table.mts'

/** Prettier pads the cells of a table. */
const unpadded = (text: string) => text.replace(/ *\| */g, '|').replace(/-{3,}/g, '---')

test('the README lists every sum with its sources and its cases; `npm run sums-table` prints the table', async () => {
  expect(unpadded(readFileSync('README.md', 'utf8'))).toContain(unpadded(await sumsTable()))
})
