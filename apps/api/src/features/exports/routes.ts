import { type ExportKind, exports } from '@bayledger/contract/exports'
import { noteExport } from '../../core/note-export.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { exportPieces } from './service.ts'

export const exportRoutes: readonly Binding[] = (Object.keys(exports) as ExportKind[]).map((kind) =>
  bind(exports[kind])(async ({ deps, actor, query }) => {
    const fileName = `${kind}-${query.from}-to-${query.to}.csv` as const
    const bytes = await exportPieces(deps, actor, kind, query)
    await noteExport(deps, actor, fileName)
    return { status: 200, bytes, fileName }
  }),
)
