import { defineWaking } from '../layout/waking-element.ts'

/** An exercise, rendered at build time; its checks answer once its code is there. */
defineWaking('hidden-fault', (element) => import('./mount.tsx').then(({ mount }) => mount(element)))
