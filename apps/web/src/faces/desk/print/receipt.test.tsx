import { paidBySides } from '@bayledger/ledger/questions/money'
import { spanish } from '@bayledger/wording/es/spanish'
import { QueryClient, QueryClientProvider } from '@tanstack/react-query'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { demoCalendar } from '../../../../../../prisma/seeds/demo/calendar.ts'
import { instruments } from '../../../../../../prisma/seeds/demo/instruments.ts'
import { orderPen } from '../../../../../../prisma/seeds/demo/order-pen.ts'
import { writeT2605 } from '../../../../../../prisma/seeds/demo/orders/t-2605.ts'
import { people } from '../../../../../../prisma/seeds/demo/people.ts'
import { type OrderReply, readOrder } from '../../../ledger/order.ts'
import { Receipt } from './receipt.tsx'
import { replyOf } from './reply-of.test-support.ts'

/** An order that was paid, of which a part was given back. */
const paid = (): OrderReply => {
  const calendar = demoCalendar('2026-01-12T11:40:00-05:00')
  const pen = orderPen('T-9001', calendar, instruments(calendar))
  writeT2605(pen)
  pen.write(
    'payment.noted',
    {
      money: pen.money({ amountCents: -230 }),
      method: 'card',
      back: { why: pen.personal('Charged too much.'), of: paidBySides(pen.state(), 'card') },
    },
    { at: '10:59', by: people.marguerite },
  )
  return replyOf(pen, 'T-9001')
}

/** The receipt's lines as the customer reads them. */
const printed = (language: 'en' | 'es') => {
  const client = new QueryClient()
  client.setQueryData(['settings'], {
    shop: { shopId: 'here', name: 'Tamber Street Tire & Wheel' },
    ...{ locations: [{ timeZone: 'America/New_York' }], settings: [] },
  })
  client.setQueryData(['customer-language', 'es'], spanish)
  const reply = paid()
  const html = renderToStaticMarkup(
    <QueryClientProvider client={client}>
      <Receipt order={readOrder({ ...reply, customer: { ...reply.customer, language } })} />
    </QueryClientProvider>,
  )
  const [, said] = /^<div lang="([a-z]+)">/.exec(html) ?? []
  const lines = html
    .replaceAll(/<\/(h1|p)>/g, '\n')
    .replaceAll(/<[^>]+>/g, '')
    .replaceAll('&amp;', '&')
    .replaceAll(/[\u00a0\u202f]/g, ' ')
    .trim()
    .split('\n')
  return { said, lines }
}

describe('a receipt', () => {
  it('says for whom it is, each payment, what was given back and why, and what was paid in all', () => {
    expect(printed('en')).toEqual({
      said: 'en',
      lines: [
        'Receipt',
        'Tamber Street Tire & Wheel',
        'For M. Okoye-Lane. Order T-9001, Pellowe Finch hatch 2017.',
        'You paid $27.30 (card) on Jan 12, 10:44 AM.',
        'We gave you back $2.30 (card) on Jan 12, 10:59 AM. The reason: Charged too much.',
        'In all you have paid $25.00.',
      ],
    })
  })

  it('says the same in Spanish to a customer who reads Spanish', () => {
    expect(printed('es')).toEqual({
      said: 'es',
      lines: [
        'Recibo',
        'Tamber Street Tire & Wheel',
        'Para M. Okoye-Lane. Orden T-9001, Pellowe Finch hatch 2017.',
        'Usted pagó $27.30 (tarjeta) el 12 ene, 10:44 a.m.',
        'Le devolvimos $2.30 (tarjeta) el 12 ene, 10:59 a.m. El motivo: Charged too much.',
        'En total usted ha pagado $25.00.',
      ],
    })
  })
})
