import type { ExportKind, ExportRange } from '@bayledger/contract/exports'
import { moneySidesOf } from '@bayledger/ledger/questions/money'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { csvPieces } from '../../core/csv/write-csv.ts'
import { refuseFields } from '../../core/refused-fields.ts'
import type { Deps } from '../../deps.ts'
import { allowedWords } from '../../words/field-words.ts'
import { readLedgerOnce } from '../entries/service/load-ledger.ts'
import { sidesOf } from '../entries/service/read-sides.ts'
import { getSettings } from '../settings/service.ts'
import { listStaff } from '../staff/service.ts'
import { mayExportCustomers } from './policy.ts'
import {
  orderColumns,
  partColumns,
  readingColumns,
  saleColumns,
  torqueColumns,
} from './service/export-columns.ts'
import { type Names, orderRow, partRow, placed, readingRow, torqueRow } from './service/export-rows.ts'
import { salesOf } from './service/sale-rows.ts'
import { type Range, readEntries, readOrders } from './store.ts'

/** A file of a range of days, piece by piece. Throws `RECORD_NOT_FOUND` and `FIELDS_INVALID` before the first. */
export const exportPieces = async (
  deps: Deps,
  actor: StaffActor,
  kind: ExportKind,
  asked: ExportRange,
): Promise<AsyncIterable<Uint8Array>> => {
  const range = await rangeOf(deps, asked)
  switch (kind) {
    case 'orders': {
      const named = mayExportCustomers(actor)
      return csvPieces(
        { columns: orderColumns },
        each(readOrders(deps.pool, range), (order) => orderRow(order, named)),
      )
    }
    case 'readings': {
      const names = await namesOf(deps)
      return csvPieces(
        { columns: readingColumns },
        each(readEntries(deps.pool, range, ['wheel.checked', 'pressure.set']), (one) =>
          readingRow(one, names),
        ),
      )
    }
    case 'torque': {
      const names = await namesOf(deps)
      return csvPieces(
        { columns: torqueColumns },
        each(readEntries(deps.pool, range, ['studs.torqued', 'torque.checked']), (one) =>
          torqueRow(one, names),
        ),
      )
    }
    case 'parts': {
      const names = await namesOf(deps)
      return csvPieces(
        { columns: partColumns },
        each(readEntries(deps.pool, range, ['part.drawn']), (one) => partRow(one, names)),
      )
    }
    case 'sales':
      return csvPieces({ columns: saleColumns }, sales(deps, range))
  }
}

/** The order's end is when it is sold; what is paid of it later is on the day of the payment. */
async function* sales(deps: Deps, range: Range) {
  const ends = ['order.handed_back', 'order.refused', 'order.withdrawn'] as const
  for await (const ended of readEntries(deps.pool, range, ends)) {
    const { entries, state } = await readLedgerOnce(deps, ended.orderId)
    const money = moneySidesOf(entries, await sidesOf(deps, entries, new Set(['money'])))
    for (const sale of salesOf(state, money)) yield { ...placed(ended), ...sale }
  }
}

async function* each<One, Row>(all: AsyncIterable<One>, toRow: (one: One) => Row): AsyncGenerator<Row> {
  for await (const one of all) yield toRow(one)
}

const namesOf = async (deps: Deps): Promise<Names> => {
  const { staff, former } = await listStaff(deps)
  return new Map([...staff, ...former].map(({ id, name }) => [id, name]))
}

const rangeOf = async (deps: Deps, { from, to, ...asked }: ExportRange): Promise<Range> => {
  const locationId = asked.locationId ?? null
  if (to < from) refuseFields([{ field: 'query.to', found: to, allowed: allowedWords.dayFrom(from) }])
  if (locationId !== null) {
    const { shop } = await getSettings(deps)
    if (!shop.locations.some(({ id }) => id === locationId))
      throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'place' })
  }
  return { shopId: deps.shopId, from, to, locationId }
}
