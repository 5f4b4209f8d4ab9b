import SearchableMap from 'minisearch/SearchableMap'
import { formsOf, stem } from './query.ts'

/** A word that the handbook does not have, and the words searched for in its place. */
export interface Mended {
  typed: string
  shown: string
}

export interface Mending {
  /** What to search for. */
  words: string[]
  mended: Mended[]
  /** Words that are neither here nor near any that are. */
  unknown: string[]
}

interface Neighbour {
  word: string
  /** How often it stands in the handbook. */
  uses: number
  /** Letters to add, take away, change or swap. */
  wrong: number
}

/** A word shorter than this has too many neighbours at one letter's distance. */
const SHORTEST_MENDED = 4

/** From this length on two wrong letters are forgiven, below it one. */
const LONG_WORD = 6

/** How much more often a near word must stand in the handbook than those that begin as the typed one does. */
const COMMONER = 3

/** The shortest part of two words that were typed as one. */
const SHORTEST_PART = 3

/** The words of the whole handbook, by which a wrong spelling is noticed and mended. */
export class Vocabulary {
  private readonly uses: SearchableMap<number>
  private readonly stems: Set<string>

  /** @param uses how often each word stands in the handbook */
  constructor(uses: Record<string, number>) {
    this.uses = SearchableMap.from(Object.entries(uses))
    this.stems = new Set(Object.keys(uses).map(stem))
  }

  /** Replaces each word that the handbook lacks by the nearest that it has. */
  mend(words: string[]): Mending {
    const mending: Mending = { words: [], mended: [], unknown: [] }
    for (const typed of words) {
      const shown = this.mendWord(typed)
      if (shown === undefined) {
        mending.unknown.push(typed)
        continue
      }
      mending.words.push(shown)
      if (shown !== typed) mending.mended.push({ typed, shown })
    }
    return mending
  }

  /** The words nearest to one that nothing was found for, however far they are, the nearest first. */
  nearest(word: string, count: number): string[] {
    return this.neighbours(word, Math.min(4, Math.ceil(word.length / 2)))
      .slice(0, count)
      .map((near) => near.word)
  }

  private mendWord(typed: string): string | undefined {
    if (formsOf(typed).every((form) => this.uses.has(form) || this.stems.has(stem(form)))) return typed
    const word = typed.replaceAll('-', '')
    const beginning = this.usesOfWordsBeginning(word)
    if (beginning === 0) return this.split(word) ?? this.nearWord(word, Infinity)?.word
    // Half a word while it is being typed, or a slip in a word that stands here much more often?
    const near = this.nearWord(word, 1)
    if (near === undefined || near.word.startsWith(word) || near.uses < COMMONER * beginning) return typed
    return near.word
  }

  private usesOfWordsBeginning(word: string): number {
    let sum = 0
    for (const uses of this.uses.atPrefix(word).values()) sum += uses
    return sum
  }

  /** The nearest word within the letters forgiven for its length, and how often it is used. */
  private nearWord(typed: string, most: number): Neighbour | undefined {
    if (typed.length < SHORTEST_MENDED || /\d/.test(typed)) return undefined
    return this.neighbours(typed, Math.min(most, typed.length >= LONG_WORD ? 2 : 1))[0]
  }

  /** Words within a number of wrong letters, the nearest first, of equally near ones the most used. */
  private neighbours(typed: string, most: number): Neighbour[] {
    // The map knows no swapped letters and counts them as two wrong ones.
    return [...this.uses.fuzzyGet(typed, Math.max(most, 2))]
      .map(([word, [uses, edits]]) => ({ word, uses, wrong: isSwap(typed, word) ? 1 : edits }))
      .filter((near) => near.wrong <= most && !/\d/.test(near.word))
      .sort((a, b) => rankOf(typed, a) - rankOf(typed, b) || b.uses - a.uses || a.word.localeCompare(b.word))
  }

  /** Two words of the handbook that were typed as one. */
  private split(typed: string): string | undefined {
    let best: string | undefined
    let bestUses = 0
    for (let at = SHORTEST_PART; at <= typed.length - SHORTEST_PART; at += 1) {
      const parts = [typed.slice(0, at), typed.slice(at)]
      const uses = Math.min(...parts.map((part) => this.uses.get(part) ?? 0))
      if (uses > bestUses) [best, bestUses] = [parts.join(' '), uses]
    }
    return best
  }
}

/** A wrong first letter is rare, so a neighbour that begins otherwise stands behind those that begin alike. */
function rankOf(typed: string, near: Neighbour): number {
  return near.wrong + (near.word[0] === typed[0] ? 0 : 0.5)
}

/** Whether two words differ by two neighbouring letters that changed places. */
function isSwap(one: string, other: string): boolean {
  if (one.length !== other.length) return false
  const at = [...one].findIndex((letter, index) => letter !== other[index])
  return (
    at >= 0 &&
    one[at] === other[at + 1] &&
    one[at + 1] === other[at] &&
    one.slice(at + 2) === other.slice(at + 2)
  )
}
