import temml from 'temml'

/**
 * MathML of a formula, made while the site is built: readers load no formula engine.
 * @param tex the formula in TeX; one that does not parse fails the build with the parser's message
 * @param display 'block' on a line of its own, 'inline' within a sentence
 */
export function mathMarkup(tex: string, display: 'block' | 'inline'): string {
  const markup = temml.renderToString(tex, {
    displayMode: display === 'block',
    throwOnError: true,
    strict: true,
  })
  // The Content-Security-Policy allows no style attribute; what Temml says by them, it also says by its classes.
  return markup.replace(/ style="[^"]*"/g, '')
}
