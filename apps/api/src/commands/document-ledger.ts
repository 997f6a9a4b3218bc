import { readFileSync, writeFileSync } from 'node:fs'
import { withKindsTable } from '@bayledger/ledger/documents/kinds-table'

/** Renews the table of entry kinds in docs/ledger.md from the registry. Run it from the repository's root. */
const path = 'docs/ledger.md'
writeFileSync(path, withKindsTable(readFileSync(path, 'utf8')))
console.log(`${path}: the table of kinds is up to date`)
