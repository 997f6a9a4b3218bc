import * as contract from '@bayledger/contract/diagnoses'
import { type Binding, bind } from '../../http/binding.ts'
import { compareWithTodaysRules, computeDiagnosis } from './service.ts'

export const diagnosisRoutes: readonly Binding[] = [
  bind(contract.computeDiagnosis)(async ({ body }) => ({ status: 200, body: computeDiagnosis(body) })),
  bind(contract.compareWithTodaysRules)(async ({ deps, params }) => ({
    status: 200,
    body: { comparison: await compareWithTodaysRules(deps, params.orderId) },
  })),
]
