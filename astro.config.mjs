import { defineConfig } from 'astro/config'
import mdx from '@astrojs/mdx'
import preact from '@astrojs/preact'
import { offlineEdition } from './components/offline/offline-edition.ts'
import { checkArticles } from './components/build/check-articles.ts'
import { handbookIndex } from './components/build/handbook-index.ts'

// A shop can serve the site from any address and any folder of it: BASE_PATH=/manuals/fuel npm run build
export default defineConfig({
  srcDir: '.',
  base: process.env.BASE_PATH ?? '/',
  trailingSlash: 'always',
  integrations: [
    mdx(),
    // Without this every file of TypeScript goes through Babel, a quarter of the build: only these have JSX.
    preact({ include: '**/*.tsx' }),
    checkArticles(),
    handbookIndex(),
    offlineEdition(),
  ],
  markdown: { syntaxHighlight: false },
  devToolbar: { enabled: false },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "object-src 'none'",
        "base-uri 'self'",
        "form-action 'self'",
        "img-src 'self' data:",
        "connect-src 'self'",
        "worker-src 'self' blob:",
      ],
      // Pagefind's index is read by WebAssembly, which the browser counts as its own kind of evaluation.
      scriptDirective: { resources: ["'self'", "'wasm-unsafe-eval'"] },
    },
  },
})
