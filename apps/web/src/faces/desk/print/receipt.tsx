import { payment } from '@bayledger/ledger/questions/money'
import { useQuery } from '@tanstack/react-query'
import { orderMoney } from '../../../features/ledger/order-money.ts'
import { settingsQuery } from '../../../features/settings/queries.ts'
import { clockTime, day, money } from '../../../lib/format.ts'
import type { OrderPart } from '../sheet/order-part.ts'
import { useCustomerLanguage } from '../sheet/use-customer-language.ts'
import { useShopClock } from '../shop-clock.ts'

/** What was paid and given back, for the customer, in their language. */
export function Receipt({ order }: OrderPart) {
  const language = useCustomerLanguage(order.customer.language)
  const settings = useQuery(settingsQuery)
  const { timeZone } = useShopClock()
  if (language === null) return null
  const { receipt, report, locale } = language
  const clock = { timeZone, locale }
  const sums = order.state.payments.map((noted) => ({
    noted,
    cents: payment(orderMoney(order), noted.money)?.amountCents ?? null,
  }))
  const left = sums.reduce((sum, { cents }) => sum + (cents ?? 0), 0)
  const said = (cents: number | null) => (cents === null ? report.cells.erased : money(Math.abs(cents)))
  return (
    <div lang={order.customer.language}>
      <h1>{receipt.title}</h1>
      <p>{settings.data?.shop.name}</p>
      <p>{receipt.of(order.customer.name, order.number, order.vehicle.description)}</p>
      {sums.map(({ noted, cents }) => {
        const at = noted.written.receivedAt ?? noted.written.writtenAt
        const when = `${day(at, at, clock)}, ${clockTime(at, clock)}`
        const method = report.money.methods[noted.method]
        return (
          <p key={noted.written.entryId}>
            {noted.back
              ? receipt.givenBack(said(cents), method, when, order.personalText(noted.back.why))
              : receipt.paid(said(cents), method, when)}
          </p>
        )
      })}
      <p>
        <strong>{receipt.kept(money(left))}</strong>
      </p>
    </div>
  )
}
