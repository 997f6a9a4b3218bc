import * as z from 'zod/mini'
import { CsvProgress } from './csv.ts'
import { endpoint } from './endpoint.ts'
import { Id } from './identity.ts'

export const getImportProgress = endpoint({
  operationId: 'getImportProgress',
  summary:
    'How far an import has come, by the id that its caller gave it; null before it begins, once it is over, and where another process of the service works on it.',
  method: 'GET',
  path: '/api/imports/:watch',
  access: { who: 'desk', roles: ['lead', 'manager', 'owner'] },
  params: z.strictObject({ watch: Id }),
  replies: { 200: z.strictObject({ progress: z.nullable(CsvProgress) }) },
  problems: [],
})
