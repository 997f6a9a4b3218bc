import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { diagnosisPage } from './diagnosis-page.ts'

/** Writes docs/diagnosis.md from the rules. */
const page = fileURLToPath(new URL('../../../../docs/diagnosis.md', import.meta.url))

writeFileSync(page, diagnosisPage())
console.log(`wrote ${page}`)
