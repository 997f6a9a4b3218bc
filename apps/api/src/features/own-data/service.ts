import type { OwnDataFile, OwnDatum } from '@bayledger/contract/own-data'
import { sideKinds } from '@bayledger/ledger/side-kinds'
import { customerLanguages } from '@bayledger/wording/customer-languages'
import type { CustomerLanguage } from '@bayledger/wording/language'
import type { StaffActor } from '../../core/actor.ts'
import { maybe, textCell } from '../../core/csv/cells.ts'
import { writeCsv } from '../../core/csv/write-csv.ts'
import { noteExport } from '../../core/note-export.ts'
import { keepVersion, listRecordVersions } from '../../core/record-versions.ts'
import { listSameRecords } from '../../core/same-records.ts'
import { type ZipFile, zipPieces } from '../../core/zip.ts'
import type { Deps } from '../../deps.ts'
import { getCustomer } from '../customers/service.ts'
import { sidesOf } from '../entries/service/read-sides.ts'
import { getLedger } from '../orders/service.ts'
import { findViewCopy, listReceived } from '../photos/service.ts'
import { getReportBytes } from '../reports/service.ts'
import { getVehicle } from '../vehicles/service.ts'
import { type CopiedFile, filesOf } from './policy.ts'
import { presentDraft, presentOrder, presentRegisters, presentReport } from './present.ts'
import * as store from './store.ts'

const longest = 100_000
const table = {
  columns: {
    about: textCell(longest),
    at: maybe(textCell(40)),
    what: textCell(longest),
    value: maybe(textCell(longest)),
  },
  key: ['about'],
} as const

/**
 * All that the shop keeps of a customer, under every record of theirs and in their language, as the pieces of a ZIP file; that it was
 * copied, and by whom, is kept too.
 */
export const copyOwnData = async (
  deps: Deps,
  actor: StaffActor,
  customerId: string,
): Promise<AsyncIterable<Uint8Array>> => {
  const customer = await getCustomer(deps, customerId)
  const own = await listSameRecords(deps.prisma, deps.shopId, 'customer', customer.customerId)
  const registers = await store.readRegisters(deps.prisma, deps.shopId, own)
  const language = customerLanguages[customer.language]
  const files = await listFiles(deps, registers)
  const data = presentRegisters(language, registers)
  for (const draft of await store.listDrafts(deps.prisma, deps.shopId, marksOf(registers)))
    data.push(presentDraft(language, draft))
  for (const { orderId, number } of registers.orders)
    data.push(...(await readOrder(deps, language, { orderId, number }, files)))
  for (const { path, of } of files) {
    const report = of.kind === 'report' && registers.reports.find(({ number }) => number === of.number)
    if (report) data.push(presentReport(language, { ...report, path }))
  }
  const at = deps.clock.now()
  await deps.prisma.$transaction(async (tx) => {
    await store.lockCustomer(tx, deps.shopId, customer.customerId)
    const copies = await listRecordVersions(tx, deps.shopId, 'own-data', customer.customerId)
    const kept = { id: customer.customerId, version: copies.length + 1, content: { count: data.length } }
    await keepVersion(tx, deps.shopId, 'own-data', kept, { by: actor, at })
  })
  await noteExport(deps, actor, 'customer-data.zip')
  const rows = data.map(({ value, ...rest }) => ({ ...rest, value: value === '' ? null : value }))
  const csv = await writeCsv(table, rows)
  const json = { asOf: at.toISOString(), data } satisfies OwnDataFile
  return zipPieces(contentsOf(deps, actor, { json, csv, files }), at)
}

/** The data first; then each file is read when its turn comes. One that was erased meanwhile is passed over. */
async function* contentsOf(
  deps: Deps,
  actor: StaffActor,
  {
    json,
    csv,
    files,
  }: { readonly json: OwnDataFile; readonly csv: Uint8Array; readonly files: readonly CopiedFile[] },
): AsyncGenerator<ZipFile> {
  yield { path: 'data.json', bytes: Buffer.from(JSON.stringify(json, null, 1)), isText: true }
  yield { path: 'data.csv', bytes: csv, isText: true }
  for (const { path, orderId, of } of files) {
    const bytes =
      of.kind === 'photo'
        ? await findViewCopy(deps, of.digest)
        : await getReportBytes(deps, actor, orderId, of.number)
    if (bytes !== null) yield { path, bytes }
  }
}

const listFiles = async (deps: Deps, { orders, reports }: store.Registers): Promise<CopiedFile[]> => {
  const found = []
  for (const { orderId, number } of orders) {
    const { entries } = await getLedger(deps, orderId)
    const named = entries.flatMap((entry) => (entry.kind === 'photo.attached' ? [entry.payload.digest] : []))
    const received = await listReceived(deps, named)
    found.push({
      ...{ orderId, number },
      reports: reports.filter((report) => report.orderId === orderId).map((report) => report.number),
      photos: named.filter((digest) => received.has(digest)),
    })
  }
  return filesOf(found)
}

/** What is theirs alone and would stand in a write-up about them. */
const marksOf = ({ customers, vehicles, orders }: store.Registers): string[] =>
  [
    ...[...customers, ...vehicles].map(({ id }) => id),
    ...orders.map(({ orderId }) => orderId),
    ...customers.flatMap(({ phone, email }) => [phone, email]),
    ...vehicles.flatMap(({ plate, vin }) => [plate === null ? null : JSON.stringify(plate), vin]),
  ].filter((mark) => mark !== null)

/** The vehicle without its plate: that may be a later owner's by now. */
const readOrder = async (
  deps: Deps,
  language: CustomerLanguage,
  { orderId, number }: { readonly orderId: string; readonly number: string },
  files: readonly CopiedFile[],
): Promise<OwnDatum[]> => {
  const { entries, state } = await getLedger(deps, orderId)
  const vehicle = await getVehicle(deps, state.opened?.vehicleId ?? '')
  const sides = await sidesOf(deps, entries, new Set(sideKinds))
  const texts = new Map(sides.map(({ digest, text }) => [digest, text]))
  const paths = new Map(
    files.flatMap(({ path, of, orderId: own }) =>
      of.kind === 'photo' && own === orderId ? [[of.digest, path]] : [],
    ),
  )
  return presentOrder(language, { number, vehicle: vehicle.description, entries }, texts, (digest) =>
    paths.get(digest),
  )
}

export const listCopies = async (deps: Deps, customerId: string) => {
  const customer = await getCustomer(deps, customerId)
  const copies = await listRecordVersions(deps.prisma, deps.shopId, 'own-data', customer.customerId)
  return copies.map(({ at, by }) => ({ at, by: by ?? '' }))
}
