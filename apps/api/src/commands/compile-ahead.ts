import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { keepCompiled } from '../keep-compiled.ts'

/**
 * Compiles what every start loads and the database client has no part in, with all that it imports, and keeps it. An install does
 * so while the client is written, which takes one core for as long.
 */
const root = join(import.meta.dirname, '../../../..')
const files = [
  'packages/contract/src/contract.ts',
  'packages/report/src/compose-content.ts',
  'packages/report/src/drawing/draw-report.ts',
  'packages/report/src/seal.ts',
  'packages/wording/src/en/english.ts',
  'prisma/seeds/demo.ts',
]
keepCompiled()
await Promise.all(files.map((file) => import(pathToFileURL(join(root, file)).href)))
