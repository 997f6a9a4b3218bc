import * as contract from '@bayledger/contract/sheets'
import { sheetsCsv as endpoints } from '@bayledger/contract/sheets-csv'
import { bindCsv } from '../../http/bind-csv.ts'
import { type Binding, bind } from '../../http/binding.ts'
import * as figures from './service/bay-figures.ts'
import { sheetsCsv } from './service/import-sheets.ts'
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
  bind(contract.createBlankSheet)(async ({ deps, actor, once, body }) => ({
    status: 201,
    body: await figures.createBlankSheet(deps, actor, once, body.name),
  })),
  bind(contract.enterFigure)(async ({ deps, actor, once, version, params, body }) => ({
    status: 201,
    body: await figures.enterFigure(deps, actor, once, { ...params, version }, body),
  })),
  bind(contract.verifyFigure)(async ({ deps, actor, once, version, params, body }) => ({
    status: 201,
    body: await figures.verifyFigure(deps, actor, once, { ...params, version }, body),
  })),
  bind(contract.listSheetOrders)(async ({ deps, params }) => ({
    status: 200,
    body: { orders: await service.listOrders(deps, params.sheetId) },
  })),
  ...bindCsv(endpoints, 'specification-sheets.csv', sheetsCsv),
]
