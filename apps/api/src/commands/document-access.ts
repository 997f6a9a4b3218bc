import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { accessPage } from './access-page.ts'

/** `npm run docs:access` writes docs/access.md from the registry and the contract. */
const page = fileURLToPath(new URL('../../../../docs/access.md', import.meta.url))

writeFileSync(page, accessPage())
console.log(`wrote ${page}`)
