import type { DayMovement } from '@bayledger/contract/day'
import type { Entry } from '@bayledger/ledger/entry'
import {
  givenBackCents,
  type MoneySides,
  moneySidesOf,
  owedCents,
  payment,
} from '@bayledger/ledger/questions/money'
import { dayOf } from '@bayledger/report/compose/figures'
import { AppError } from '../../core/app-error.ts'
import { centsCell, choiceCell, maybe, textCell, yesNoCell } from '../../core/csv/cells.ts'
import { writeCsv } from '../../core/csv/write-csv.ts'
import type { Deps } from '../../deps.ts'
import type { Ledger } from '../entries/service/load-ledger.ts'
import { sidesOf } from '../entries/service/read-sides.ts'
import { localInstant } from '../exports/service/local-instant.ts'
import { getLedger } from '../orders/service.ts'
import { getSettings } from '../settings/service.ts'
import { listStaff } from '../staff/service.ts'
import * as store from './store.ts'

type Asked = { readonly locationId: string; readonly day: string }

type Place = Asked & { readonly shopId: string; readonly timeZone: string }

const placeOf = async (deps: Deps, { locationId, day }: Asked): Promise<Place> => {
  const { shop } = await getSettings(deps)
  const place = shop.locations.find(({ id }) => id === locationId)
  if (!place) throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'place' })
  return { shopId: deps.shopId, locationId, day, timeZone: place.timeZone }
}

const moneyOf = async (deps: Deps, { entries }: Ledger): Promise<MoneySides> =>
  moneySidesOf(entries, await sidesOf(deps, entries, new Set(['money'])))

/** `isBack`: it is money given back, or corrects that; else it was received, or corrects what was. */
type Counted = { readonly movement: DayMovement; readonly isBack: boolean }

/** What was paid and given back at a place on its day, in the order in which it was noted. */
const listMovements = async (deps: Deps, place: Place): Promise<Counted[]> => {
  const { staff, former } = await listStaff(deps)
  const names = new Map([...staff, ...former].map(({ id, name }) => [id, name]))
  const nameOf = ({ writtenBy }: Entry) =>
    writtenBy.kind === 'staff' ? (names.get(writtenBy.staffId) ?? '') : ''
  const orders = await store.listPaidOrders(deps.pool, place)
  const movements: Counted[] = []
  for (const orderId of orders) {
    const ledger = await getLedger(deps, orderId)
    const money = await moneyOf(deps, ledger)
    const number = ledger.state.opened?.orderNumber ?? ''
    for (const { entry, method, digest, takesBack } of paidIn(ledger.entries)) {
      if (dayOf(entry.receivedAt, place.timeZone) !== place.day) continue
      const cents = payment(money, digest)?.amountCents ?? null
      const movement = {
        ...{ orderId, number, at: entry.receivedAt, by: nameOf(entry), method },
        amountCents: cents === null || !takesBack ? cents : 0 - cents,
        isCorrection: entry.kind === 'payment.corrected',
      }
      movements.push({ movement, isBack: (cents ?? 0) < 0 })
    }
  }
  const at = ({ movement }: Counted) => movement.at
  return movements.toSorted((one, other) => (at(one) < at(other) ? -1 : at(one) > at(other) ? 1 : 0))
}

type Paid = {
  readonly entry: Entry
  readonly method: DayMovement['method']
  readonly digest: string
  readonly takesBack: boolean
}

/** A correction takes back what the payment was until then, by the way in which it was noted. */
const paidIn = (entries: readonly Entry[]): readonly Paid[] => {
  const methods = new Map<string, DayMovement['method']>()
  return entries.flatMap((entry): Paid[] => {
    if (entry.kind === 'payment.noted') {
      methods.set(entry.id, entry.payload.method)
      return [{ entry, method: entry.payload.method, digest: entry.payload.money, takesBack: false }]
    }
    if (entry.kind !== 'payment.corrected') return []
    const { paymentId, replaces, money, method } = entry.payload
    const before = methods.get(paymentId) ?? method
    methods.set(paymentId, method)
    return [
      { entry, method: before, digest: replaces, takesBack: true },
      { entry, method, digest: money, takesBack: false },
    ]
  })
}

export const getDay = async (deps: Deps, asked: Asked) => {
  const place = await placeOf(deps, asked)
  const counted = await listMovements(deps, place)
  const balances = []
  for (const { orderId, customer } of await store.listUnsettled(deps.pool, place)) {
    const ledger = await getLedger(deps, orderId)
    const sides = await moneyOf(deps, ledger)
    const owed = owedCents(ledger.state, sides)
    if (owed !== null && owed !== 0)
      balances.push({
        orderId,
        number: ledger.state.opened?.orderNumber ?? '',
        customer,
        owedCents: owed,
        givenBackCents: givenBackCents(ledger.state, sides) ?? 0,
      })
  }
  const methods = [...new Set(counted.map(({ movement }) => movement.method))]
  const sumOf = (method: DayMovement['method'], wantsBack: boolean) =>
    counted
      .filter(({ movement, isBack }) => movement.method === method && isBack === wantsBack)
      .reduce((sum, { movement }) => sum + (movement.amountCents ?? 0), 0)
  return {
    movements: counted.map(({ movement }) => movement),
    // What was typed wrong and corrected never moved: it is neither received nor given back.
    totals: methods.map((method) => ({
      method,
      receivedCents: sumOf(method, false),
      returnedCents: 0 - sumOf(method, true),
    })),
    balances,
  }
}

const mostCents = { fromCents: -100_000_000, toCents: 100_000_000 }
const columns = {
  order: textCell(40),
  at: textCell(40),
  by: textCell(120),
  method: choiceCell(['cash', 'card', 'check', 'account', 'none-due']),
  amount: maybe(centsCell(mostCents)),
  correction: yesNoCell(),
}

/** The day's movements as CSV, at the times of the place's clock; a name that a spreadsheet would run as a formula is shown as text. */
export const exportDay = async (deps: Deps, asked: Asked): Promise<Uint8Array> => {
  const place = await placeOf(deps, asked)
  const rows = (await listMovements(deps, place)).map(
    ({ movement: { number, at, by, method, amountCents, isCorrection } }) => ({
      ...{ order: number, at: localInstant(at, place.timeZone), by, method },
      ...{ amount: amountCents, correction: isCorrection },
    }),
  )
  return writeCsv({ columns, key: ['order'] }, rows)
}
