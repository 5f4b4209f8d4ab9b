import { parse } from 'yaml'
import { catalogue } from '../../calculators/catalogue/index.ts'
import { kinds } from '../../calculators/quantity/kinds.ts'
import { readClaim } from './claim.ts'
import { claimScopes } from './claim-scope.ts'
import {
  ARTICLES_PLANT,
  calculatorIds,
  idsOfFile,
  idsOfFolder,
  keysIn,
  pagePaths,
  shownPlant,
  textIn,
} from './ids.ts'
import { mdxPages, pairsOf, tagsOf, type MdxPage, type Tag } from './mdx-pages.ts'

type Reader = (written: string) => string[]
const asItStands: Reader = (written) => [written]
const withoutAnchor: Reader = (written) => [written.replace(/#.*$/, '')]
const quotedTexts: Reader = (written) =>
  [...written.matchAll(/'([^']*)'|"([^"]*)"/g)].map((found) => found[1] ?? found[2] ?? '')
const valuesOfObject: Reader = (written) => Object.values(pairsOf(written))
const keysOfObject: Reader = (written) => Object.keys(pairsOf(written))

const ORIGINS = ['source', 'practice', 'memory', 'example'] as const

/** For each attribute that names an id: what may stand there, and how the ids are read from it. */
function idAttributes(): Readonly<Record<string, readonly [readonly string[], Reader]>> {
  const setPoints = setPointIds()
  const circuits = idsOfFolder('circuits')
  return {
    'Setpoint of': [setPoints, asItStands],
    'SetPointTable of': [setPoints, quotedTexts],
    'Caution id': [idsOfFile('cautions/cautions.yaml'), asItStands],
    'Quantity kind': [Object.keys(kinds), asItStands],
    'SketchFigure kind': [Object.keys(kinds), asItStands],
    'Calculator id': [calculatorIds(), asItStands],
    'Calculator fuel': [idsOfFolder('fuels'), asItStands],
    'Calculator setPoints': [setPoints, valuesOfObject],
    'Curves id': [calculatorIds(), asItStands],
    'Curves fuel': [idsOfFolder('fuels'), asItStands],
    'Curves setPoints': [setPoints, valuesOfObject],
    'Curves limit': [setPoints, asItStands],
    'CircuitDrawing circuit': [circuits, asItStands],
    'CircuitBench preset': [idsOfFolder('benches'), asItStands],
    'CircuitParts circuit': [circuits, asItStands],
    'GlassSigns circuit': [circuits, asItStands],
    'GlassSigns of': [idsOfFolder('faults'), quotedTexts],
    'PageLink to': [pagePaths(), withoutAnchor],
  }
}

/** The set points that an article may name: those of the plant shown, and what load.ts borrows for it. */
function setPointIds(): string[] {
  const plants = idsOfFolder('plants')
  const shown = shownPlant()
  if (!plants.includes(shown))
    throw new Error(`PLANT: «${shown}» is not an id of content/plants; allowed: ${plants.join(', ')}`)
  const own = keysIn(`plants/${shown}.yaml`, 'setPoints')
  const circuitOf = (plant: string) => textIn(`plants/${plant}.yaml`, 'circuit')
  if (circuitOf(shown) === circuitOf(ARTICLES_PLANT)) return own
  return [...new Set([...own, ...keysIn(`plants/${ARTICLES_PLANT}.yaml`, 'setPoints')])]
}

/**
 * What the components of these pages name that is not there, each with file, line, component and attribute, and
 * what is allowed; empty when all is well.
 */
export async function mdxProblems(pages: readonly MdxPage[] = mdxPages()): Promise<string[]> {
  const known = idAttributes()
  const sources = idsOfFile('sources/sources.yaml')
  const scopes = claimScopes()
  const found: string[] = []
  for (const { path, text } of pages) {
    const listed = listedSources(text)
    for (const tag of tagsOf(text)) {
      const at = (attribute: string) => `${path}:${tag.line}: <${tag.name}${attribute && ` ${attribute}`}>: `
      const notIn = (attribute: string, ids: readonly string[], allowed: readonly string[], of: string) =>
        ids
          .filter((id) => !allowed.includes(id))
          .map((id) => `${at(attribute)}«${id}» is not ${of}; allowed: ${allowed.join(', ') || 'none'}`)
      for (const [attribute, written] of Object.entries(tag.attributes)) {
        const [allowed, read] = known[`${tag.name} ${attribute}`] ?? [[], () => []]
        found.push(...notIn(attribute, read(written), allowed, 'known'))
      }
      const cited = citationOf(tag)
      if (cited && !sources.includes(cited.id))
        found.push(...notIn(cited.attribute, [cited.id], sources, 'an id of content/sources'))
      else if (cited)
        found.push(
          ...notIn(cited.attribute, [cited.id], listed, "among the sources of the page's front matter"),
        )
      if (tag.name === 'Quantity') {
        const origins = ORIGINS.filter((origin) => origin in tag.attributes)
        if (origins.length !== 1)
          found.push(
            `${at('')}«${tag.attributes['value'] ?? ''}» has ${origins.length} origins; allowed: exactly one of source="…", practice, memory, example`,
          )
      }
      const claim = tag.name === 'Claim' ? readClaim(tag.attributes, scopes) : undefined
      if (claim?.ok === false) found.push(...claim.problems.map((problem) => at('') + problem))
      const load = tag.name === 'Calculator' ? catalogue[tag.attributes['id'] ?? ''] : undefined
      if (load) {
        const { id, inputs } = await load()
        for (const attribute of ['preset', 'setPoints'])
          found.push(
            ...notIn(
              attribute,
              keysOfObject(tag.attributes[attribute] ?? ''),
              Object.keys(inputs),
              `an input of ${id}`,
            ),
          )
      }
    }
  }
  return found
}

function citationOf({ name, attributes }: Tag): { attribute: string; id: string } | undefined {
  const attribute = { Cite: 'of', Quantity: 'source' }[name]
  const id = attribute === undefined ? undefined : attributes[attribute]
  return attribute === undefined || id === undefined ? undefined : { attribute, id }
}

function listedSources(text: string): readonly string[] {
  const front = /^---\n([\s\S]*?)\n---\n/.exec(text)?.[1]
  return front === undefined ? [] : ((parse(front) as { sources?: string[] }).sources ?? [])
}
