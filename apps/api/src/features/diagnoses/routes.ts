import { computeDiagnosis as endpoint } from '@bayledger/contract/diagnoses'
import { type Binding, bind } from '../../http/binding.ts'
import { computeDiagnosis } from './service.ts'

export const diagnosisRoutes = (): Binding[] => [
  bind(endpoint)(async ({ body }) => ({ status: 200, body: computeDiagnosis(body) })),
]
