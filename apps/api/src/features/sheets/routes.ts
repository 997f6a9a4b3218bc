import * as contract from '@bayledger/contract/sheets'
import { type Binding, bind } from '../../http/binding.ts'
import * as service from './service.ts'

export const sheetRoutes: readonly Binding[] = [
  bind(contract.listSheets)(async ({ deps }) => ({
    status: 200,
    body: { sheets: await service.listSheets(deps) },
  })),
  bind(contract.createSheet)(async ({ deps, actor, once, body }) => ({
    status: 201,
    body: await service.createSheet(deps, actor, once, body),
  })),
  bind(contract.getSheet)(async ({ deps, params }) => ({
    status: 200,
    body: { versions: await service.getSheet(deps, params.sheetId) },
  })),
  bind(contract.createSheetVersion)(async ({ deps, actor, once, version, params, body }) => ({
    status: 201,
    body: await service.createVersion(deps, actor, once, { sheetId: params.sheetId, version, content: body }),
  })),
]
