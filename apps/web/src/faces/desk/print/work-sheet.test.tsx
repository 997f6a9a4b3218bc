import { QueryClient, QueryClientProvider } from '@tanstack/react-query'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { demoCalendar } from '../../../../../../prisma/seeds/demo/calendar.ts'
import { instruments } from '../../../../../../prisma/seeds/demo/instruments.ts'
import { type OrderPen, orderPen } from '../../../../../../prisma/seeds/demo/order-pen.ts'
import { writeT2603 } from '../../../../../../prisma/seeds/demo/orders/t-2603.ts'
import { writeT2619 } from '../../../../../../prisma/seeds/demo/orders/t-2619.ts'
import { readOrder } from '../../../ledger/order.ts'
import { replyOf } from './reply-of.test-support.ts'
import { WorkSheet } from './work-sheet.tsx'

/** What a technician reads on the paper. */
const printed = (write: (pen: OrderPen) => unknown): string => {
  const calendar = demoCalendar('2026-01-12T11:40:00-05:00')
  const pen = orderPen('T-9001', calendar, instruments(calendar))
  write(pen)
  const client = new QueryClient()
  client.setQueryData(['settings'], { locations: [{ timeZone: 'America/New_York' }], settings: [] })
  return renderToStaticMarkup(
    <QueryClientProvider client={client}>
      <WorkSheet order={readOrder(replyOf(pen, 'T-9001'))} />
    </QueryClientProvider>,
  )
}

describe('a work sheet', () => {
  it('begins with the cautions, then what was found', () => {
    const html = printed(writeT2619)
    const caution = html.indexOf('sealant in the right rear tire')
    expect(caution).toBeGreaterThan(0)
    expect(html.indexOf('<h2>')).toBeGreaterThan(caution)
    expect(html).toContain('<h2>Found</h2>')
    expect(html).toContain('A can of sealant was used in the right rear tire.')
  })

  it('says what was agreed, and ticks the steps that are closed', () => {
    const html = printed(writeT2603)
    expect(html).toMatch(/New sensor, left front and right rear<\/td><td>Yes/)
    expect(html).toMatch(/Inspection<\/td><td>at the write-up/)
    const steps = html.match(/<li>.*?<\/li>/g) ?? []
    const ticked = steps.filter((step) => step.includes('<svg'))
    expect(ticked).toHaveLength(7)
    for (const step of steps) expect(step.includes('<svg')).toBe(step.includes('(closed)'))
  })
})
