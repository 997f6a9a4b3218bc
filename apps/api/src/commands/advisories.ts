import { readFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { advisoryLines } from './advisories/advisory-lines.ts'
import { askRegistry } from './advisories/ask-registry.ts'

/**
 * `npm run -s advisories`: compares every locked package with the advisories of the registry, or of `--registry <address>`. Ends with
 * status 1 where one has no answer in docs/supply-chain.md, and with 2 and what to do where nothing could be compared.
 */
const { values } = parseArgs({ options: { registry: { type: 'string' } } })
const compared = await askRegistry('.', values.registry ?? null)
const { lines, status } = advisoryLines(compared, readFileSync('docs/supply-chain.md', 'utf8'))
for (const line of lines) console.log(line)
process.exitCode = status
