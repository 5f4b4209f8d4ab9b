import type { Refusal } from '../calculator/types.ts'

/** What a command prints: a text as it stands, anything else as JSON. A refusal ends with status 2. */
export type Answer = { readonly text: string } | { readonly json: unknown } | { readonly refusal: Refusal }

export interface Command {
  readonly name: string
  /** What stands behind the name: 'ID'. */
  readonly usage: string
  readonly summary: string
  /**
   * @param words what was typed behind the command
   * @param standardInput reads all of it; called only by commands that need it
   */
  readonly run: (words: readonly string[], standardInput: () => Promise<string>) => Promise<Answer>
}

export const refused = (field: string, reason: string, accepted: string): Answer => ({
  refusal: { field, reason, accepted },
})

/** What was read, in guillemets, cut short where it is long. */
export function quoted(text: string): string {
  return `«${text.length > 40 ? `${text.slice(0, 40)}…` : text}»`
}
