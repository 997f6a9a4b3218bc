import { getImportProgress } from '@bayledger/contract/imports'
import { progressOf } from '../../core/csv/import-progress.ts'
import { type Binding, bind } from '../../http/binding.ts'

export const importRoutes: readonly Binding[] = [
  bind(getImportProgress)(async ({ deps, params }) => ({
    status: 200,
    body: { progress: progressOf(deps, params.watch) },
  })),
]
