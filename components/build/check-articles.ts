import type { AstroIntegration } from 'astro'
import { mdxProblems } from '../content/mdx-problems.ts'

/** Before each build: whatever an article names that is not there stops the build, all of it told at once. */
export function checkArticles(): AstroIntegration {
  return {
    name: 'check-articles',
    hooks: {
      'astro:build:start': async () => {
        const problems = await mdxProblems()
        if (problems.length > 0) throw new Error(`Wrong in the articles:\n${problems.join('\n')}`)
      },
    },
  }
}
