import type { OwnDatum } from '@bayledger/contract/own-data'
import { sideKinds } from '@bayledger/ledger/side-kinds'
import { customerLanguages } from '@bayledger/wording/customer-languages'
import type { CustomerLanguage } from '@bayledger/wording/language'
import type { StaffActor } from '../../core/actor.ts'
import { maybe, textCell } from '../../core/csv/cells.ts'
import { writeCsv } from '../../core/csv/write-csv.ts'
import { keepVersion, listRecordVersions } from '../../core/record-versions.ts'
import { listSameRecords } from '../../core/same-records.ts'
import type { Deps } from '../../deps.ts'
import { getCustomer } from '../customers/service.ts'
import { sidesOf } from '../entries/service/read-sides.ts'
import { getLedger } from '../orders/service.ts'
import { getVehicle } from '../vehicles/service.ts'
import { presentOrder, presentRegisters } from './present.ts'
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

/** All that the shop keeps of a customer, under every record of theirs and in their language; that it was copied, and by whom, is kept too. */
export const copyOwnData = async (deps: Deps, actor: StaffActor, customerId: string) => {
  const customer = await getCustomer(deps, customerId)
  const own = await listSameRecords(deps.prisma, deps.shopId, 'customer', customer.customerId)
  const registers = await store.readRegisters(deps.prisma, deps.shopId, own)
  const language = customerLanguages[customer.language]
  const data = presentRegisters(language, registers)
  for (const { orderId, number } of registers.orders)
    data.push(...(await readOrder(deps, language, orderId, number)))
  const at = deps.clock.now()
  await deps.prisma.$transaction(async (tx) => {
    await store.lockCustomer(tx, deps.shopId, customer.customerId)
    const copies = await listRecordVersions(tx, deps.shopId, 'own-data', customer.customerId)
    const kept = { id: customer.customerId, version: copies.length + 1, content: { count: data.length } }
    await keepVersion(tx, deps.shopId, 'own-data', kept, { by: actor, at })
  })
  const rows = data.map(({ value, ...rest }) => ({ ...rest, value: value === '' ? null : value }))
  const csv = new TextDecoder('utf-8', { ignoreBOM: true }).decode(await writeCsv(table, rows))
  return { asOf: at.toISOString(), data, csv }
}

/** The vehicle without its plate: that may be a later owner's by now. */
const readOrder = async (
  deps: Deps,
  language: CustomerLanguage,
  orderId: string,
  number: string,
): Promise<OwnDatum[]> => {
  const { entries, state } = await getLedger(deps, orderId)
  const vehicle = await getVehicle(deps, state.opened?.vehicleId ?? '')
  const sides = await sidesOf(deps, entries, new Set(sideKinds))
  const texts = new Map(sides.map(({ digest, text }) => [digest, text]))
  return presentOrder(language, { number, vehicle: vehicle.description, entries }, texts)
}

export const listCopies = async (deps: Deps, customerId: string) => {
  const customer = await getCustomer(deps, customerId)
  const copies = await listRecordVersions(deps.prisma, deps.shopId, 'own-data', customer.customerId)
  return copies.map(({ at, by }) => ({ at, by: by ?? '' }))
}
