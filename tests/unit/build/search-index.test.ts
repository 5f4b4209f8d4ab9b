import { describe, expect, it } from 'vitest'
import { indexedHtml, treeOf } from '../../../components/build/indexed-html.ts'
import { listEntries } from '../../../components/build/list-entries.ts'
import { WordUses } from '../../../components/build/near-words.ts'

describe('a page as the index reads it', () => {
  it('has a space between cells, but none within a word', () => {
    const html = indexedHtml(
      treeOf('<table><tr><th>draws air</th><td>common</td></tr></table><p>m<sup>2</sup>/s</p>'),
    )
    expect(html).toContain('draws air</th> <td>common</td>')
    expect(html).toContain('m<sup>2</sup>/s')
  })

  it('lets a heading without an id take that of the box it heads', () => {
    const html = indexedHtml(
      treeOf('<ul><li id="part-tank"><h4>Tank</h4></li><li id="two"><h4 id="own">Two</h4></li></ul>'),
    )
    expect(html).toContain('<li><h4 id="part-tank">Tank</h4>')
    expect(html).toContain('<li id="two"><h4 id="own">Two</h4>')
  })
})

describe('the words of the handbook', () => {
  const body = `<nav>menu</nav><article data-pagefind-body><h2>Strainer</h2><p>the spin-on strainer</p>
    <p data-pagefind-ignore>ignored</p><p hidden data-pagefind-ignore data-pagefind-meta="aliases">basket</p></article>`
  const uses = new WordUses()
  uses.addPage(treeOf(body))
  const words = uses.sorted()

  it('are those that can be found, names above running text', () => {
    expect(Object.keys(words)).toEqual(['basket', 'on', 'spin', 'spinon', 'strainer', 'the'])
    expect(words['strainer']).toBe(6)
    expect(words['basket']).toBe(5)
  })

  it('hold those of the entries of lists', () => {
    const entry = { url: '/glossary/#x', content: 'Priming', language: 'en', meta: { title: 'priming' } }
    const ofLists = new WordUses()
    ofLists.addRecord(entry)
    expect(ofLists.sorted()).toEqual({ priming: 6 })
  })
})

describe('the entries of lists', () => {
  it('are none where the page is not built', () => {
    expect(listEntries([])).toEqual([])
  })

  it('fail the build when the page lacks one', () => {
    expect(() => listEntries([{ path: '/glossary/', html: '<p id="other"></p>' }])).toThrow(
      '/glossary/ has no element with the id of',
    )
  })
})
