import { readFileSync, writeFileSync } from 'node:fs'
import { licensesPage, lockedPackages } from './licenses-page.ts'

/** Writes docs/licenses.md from the lock file. Run it from the repository's root. */
const path = 'docs/licenses.md'
writeFileSync(path, licensesPage(lockedPackages(readFileSync('package-lock.json', 'utf8'))))
console.log(`wrote ${path}`)
