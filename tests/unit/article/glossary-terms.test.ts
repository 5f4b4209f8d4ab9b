import { describe, expect, it } from 'vitest'
import { finishArticle } from '../../../components/article/article-html.ts'

const terms = [
  { id: 'filter', term: 'filter', forms: ['filter', 'filters'], definition: 'It holds dirt back.' },
  { id: 'valve', term: 'valve', forms: ['valve', 'valves'], definition: 'It opens and shuts.' },
  {
    id: 'bypass-valve',
    term: 'bypass valve',
    forms: ['bypass valve', 'bypass valves'],
    definition: 'It opens past <a filter>.',
  },
  { id: 'spin-on', term: 'spin-on filter', forms: ['spin-on'], definition: 'A filter in its own can.' },
  { id: 'd341', term: 'D341', forms: ['D341', 'ASTM D341 (2020)'], definition: 'A line in viscosity.' },
]
const marked = (html: string) => finishArticle(html, terms, (id) => `/glossary/#${id}`).html
/** The marked words in their order. */
const words = (html: string) =>
  [...marked(html).matchAll(/<button type="button" class="term"[^>]*>([^<]*)</g)].map((match) => match[1])

describe('the first use of a glossary term', () => {
  it('becomes a button, and its definition stands at the end with a link to the glossary', () => {
    expect(marked('<p>Change the filter, then a filter.</p>')).toBe(
      '<p>Change the <button type="button" class="term" popovertarget="term-filter">filter</button>, then a filter.</p>' +
        '<div id="term-filter" class="term-note" popover="auto" data-pagefind-ignore="">' +
        '<p class="term-note-title">filter</p><p>It holds dirt back.</p><a href="/glossary/#filter">In the glossary</a></div>',
    )
  })

  it('is found in any form and in any case, and only once for all its forms', () => {
    expect(words('<p>Filters first. A filter, a FILTER.</p>')).toEqual(['Filters'])
  })

  it('is found with a line break inside it', () => {
    expect(words('<p>the bypass\n  valve</p>')).toEqual(['bypass\n  valve'])
  })

  it('is found beside brackets and full stops, and with signs of its own', () => {
    expect(words('<p>(filter). By ASTM D341 (2020).</p>')).toEqual(['filter', 'ASTM D341 (2020)'])
    expect(words('<p>A spin-on, new.</p>')).toEqual(['spin-on'])
  })

  it('is counted through the whole article, not paragraph by paragraph', () => {
    expect(words('<p>A filter.</p><ul><li>A filter and a valve.</li></ul>')).toEqual(['filter', 'valve'])
  })
})

describe('what is no use of a term', () => {
  it.each(['prefilter', 'filtering', 'pre-filter', 'filter-holder', 'filter2', 'éfilter'])(
    'the word %s',
    (word) => {
      expect(words(`<p>${word}</p>`)).toEqual([])
    },
  )

  it('a term within a longer one, even after the longer one has had its mark', () => {
    expect(words('<p>The bypass valve. The bypass valve again, and a valve.</p>')).toEqual([
      'bypass valve',
      'valve',
    ])
  })

  it.each([
    '<h2 id="x">The filter</h2>',
    '<a href="/x/">the <em>filter</em></a>',
    '<button type="button">filter</button>',
    '<code>filter</code>',
    '<table><thead><tr><th scope="col">filter</th></tr></thead></table>',
    '<figure><figcaption>filter</figcaption></figure>',
    '<svg viewBox="0 0 1 1"><text>filter</text></svg>',
    '<math><mtext>filter</mtext></math>',
    '<calculator-form><p>filter</p></calculator-form>',
    '<astro-island ssr=""><p>filter</p></astro-island>',
    '<div data-no-terms=""><p>filter</p></div>',
    '<div popover="auto"><p>filter</p></div>',
  ])('a word in %s', (html) => {
    expect(marked(html)).toBe(html)
    expect(words(`${html}<p>A filter.</p>`)).toEqual(['filter'])
  })
})

describe('the rest of the HTML', () => {
  it.each([
    '<script type="module">if (1 < 2 && "filter") run("</p>")</script>',
    '<script type="module" src="/_astro/x.js"></script>',
    '<astro-island uid="1" props="{&#x22;a&#x22;:[0,&#x22;b&#x22;]}" ssr="" client="visible"><p>x</p><!--astro:end--></astro-island>',
    '<svg viewBox="0 0 2 2" preserveAspectRatio="none"><linearGradient id="g"></linearGradient></svg>',
    '<math display="block"><mrow><mi>ν</mi><mo>=</mo><mn>1</mn></mrow></math>',
    '<p>One <b>two</b> <i>three</i>\n  four</p>\n\n<p>  five&#x3C;6 </p>',
    '<details open><summary>More</summary></details>',
  ])('stays as it is: %s', (html) => {
    expect(marked(html)).toBe(html)
  })

  it('says a definition as text, never as HTML', () => {
    expect(marked('<p>A bypass valve.</p>')).toContain('<p>It opens past &#x3C;a filter>.</p>')
  })

  it('is unchanged by an empty glossary', () => {
    expect(finishArticle('<p>A filter.</p>', [], () => '').html).toBe('<p>A filter.</p>')
  })
})

describe('a table', () => {
  it('has no header cell without words, and each says what it heads', () => {
    expect(
      marked('<table><tr><th></th><th>Holds</th></tr><tr><th scope="row">A</th><td>B</td></tr></table>'),
    ).toBe(
      '<table><tbody><tr><td></td><th scope="col">Holds</th></tr><tr><th scope="row">A</th><td>B</td></tr></tbody></table>',
    )
  })
})

describe('the headings of an article', () => {
  it('are those of the second and third level that have an id', () => {
    const html =
      '<h2 id="a">The <em>first</em></h2><h3 id="b">Below it</h3><h2>No id</h2><h4 id="c">Deep</h4>'
    expect(finishArticle(html, terms, () => '').headings).toEqual([
      { id: 'a', text: 'The first', level: 2 },
      { id: 'b', text: 'Below it', level: 3 },
    ])
  })
})
