import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { keepCompiled } from '../keep-compiled.ts'

/**
 * Compiles what every start loads, with all that it imports, and keeps it. An install does so in two parts: what the
 * database client has no part in while that is written, which takes one core for as long, and then the service.
 */
const root = join(import.meta.dirname, '../../../..')
const parts = {
  beside: [
    'packages/contract/src/contract.ts',
    'packages/report/src/compose-content.ts',
    'packages/report/src/drawing/draw-report.ts',
    'packages/report/src/seal.ts',
    'packages/wording/src/en/english.ts',
    'prisma/seeds/demo.ts',
  ],
  service: ['apps/api/src/serve.ts'],
} as const

keepCompiled()
const files = process.argv[2] === 'service' ? parts.service : parts.beside
await Promise.all(files.map((file) => import(pathToFileURL(join(root, file)).href)))
