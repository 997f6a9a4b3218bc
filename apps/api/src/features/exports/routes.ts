import { type ExportKind, exports } from '@bayledger/contract/exports'
import { type Binding, bind } from '../../http/binding.ts'
import { exportPieces } from './service.ts'

export const exportRoutes: readonly Binding[] = (Object.keys(exports) as ExportKind[]).map((kind) =>
  bind(exports[kind])(async ({ deps, actor, query }) => ({
    status: 200,
    bytes: await exportPieces(deps, actor, kind, query),
    fileName: `${kind}-${query.from}-to-${query.to}.csv`,
  })),
)
