import type { CsvEndpoints } from '@bayledger/contract/csv-endpoints'
import type { CsvService } from '../core/csv/csv-service.ts'
import { watched } from '../core/csv/import-progress.ts'
import { noteExport } from '../core/note-export.ts'
import { type Binding, bind } from './binding.ts'

/** The three routes of a list's CSV, each answered by its service. */
export const bindCsv = (
  routes: CsvEndpoints,
  fileName: `${string}.csv`,
  { write, preview, apply }: CsvService,
): readonly Binding[] => [
  bind(routes.write)(async ({ deps, actor }) => {
    await noteExport(deps, actor, fileName)
    return { status: 200, bytes: await write(deps), fileName }
  }),
  bind(routes.preview)(async ({ deps, query, body }) => ({
    status: 200,
    body: await watched(deps, query.watch, (tell) => preview(deps, body, tell)),
  })),
  bind(routes.apply)(async ({ deps, actor, once, query, body }) => ({
    status: 200,
    body: await watched(deps, query.watch, (tell) =>
      apply(deps, actor, once, { bytes: body, apply: query }, tell),
    ),
  })),
]
