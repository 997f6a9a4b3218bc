import { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'

export const computeDiagnosis = endpoint({
  operationId: 'computeDiagnosis',
  summary: 'Findings for evidence that is not in an order: the same as `npm run -s diagnose` prints.',
  method: 'POST',
  path: '/api/diagnoses',
  access: { who: 'staff' },
  body: z.record(z.string(), z.unknown()),
  replies: { 200: Diagnosis },
  problems: ['EVIDENCE_INVALID'],
})
