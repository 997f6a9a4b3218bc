import type { Entry } from '@bayledger/ledger/entry'
import type { MoneySides } from '@bayledger/ledger/questions/money'
import type { DemoCalendar } from './calendar.ts'
import type { DemoEnd } from './hand-back.ts'
import type { DemoInstrument } from './instruments.ts'
import { type DemoLine, type DemoPhoto, type OrderPen, orderPen } from './order-pen.ts'
import { writeT2601 } from './orders/t-2601.ts'
import { t2602Link, writeT2602 } from './orders/t-2602.ts'
import { writeT2603 } from './orders/t-2603.ts'
import { writeT2604 } from './orders/t-2604.ts'
import { writeT2605 } from './orders/t-2605.ts'
import { writeT2606 } from './orders/t-2606.ts'
import { writeT2607 } from './orders/t-2607.ts'
import { writeT2609 } from './orders/t-2609.ts'
import { writeT2610 } from './orders/t-2610.ts'
import { writeT2613 } from './orders/t-2613.ts'
import { writeT2614 } from './orders/t-2614.ts'
import { writeT2616 } from './orders/t-2616.ts'
import { writeT2617 } from './orders/t-2617.ts'
import { writeT2620 } from './orders/t-2620.ts'

/** A link that the customer holds, as the desk sent it and as it was opened. */
export type DemoLink = {
  readonly linkId: string
  readonly sentBy: string
  readonly sentAt: string
  readonly openings: readonly { readonly id: string; readonly openedAt: string }[]
}

/** One order in mid-flight: every entry as it goes to the ledger, and what the ledger makes of it. */
export type DemoOrder = {
  readonly number: string
  readonly orderId: string
  readonly lines: readonly DemoLine[]
  readonly entries: readonly Entry[]
  readonly money: MoneySides
  readonly links: readonly DemoLink[]
  readonly photos: readonly DemoPhoto[]
  /** The end that needs the shop's signing key: the loader seals, then hands back. `null`: still open. */
  readonly end: DemoEnd | null
}

/**
 * The orders of the demo day, each written through the ledger's own `append` and therefore admitted by it: as soon as anybody
 * looks at more than its number.
 */
export const demoOrders = (
  calendar: DemoCalendar,
  instruments: readonly DemoInstrument[],
): readonly DemoOrder[] => {
  const open = (number: string, write: (pen: OrderPen) => void, links: readonly DemoLink[] = []): DemoOrder =>
    whenLookedAt(number, () => {
      const pen = orderPen(number, calendar, instruments)
      write(pen)
      return writtenBy(pen, links, null)
    })
  const finished = (number: string, write: (pen: OrderPen) => DemoEnd): DemoOrder =>
    whenLookedAt(number, () => {
      const pen = orderPen(number, calendar, instruments)
      return writtenBy(pen, [], write(pen))
    })
  const link: DemoLink = {
    linkId: t2602Link.linkId,
    sentBy: t2602Link.sentBy.id,
    sentAt: calendar.at(t2602Link.sentAt),
    openings: [{ id: t2602Link.openingId, openedAt: calendar.at(t2602Link.openedAt) }],
  }
  return [
    finished('T-2601', writeT2601),
    open('T-2602', writeT2602, [link]),
    open('T-2603', writeT2603),
    open('T-2604', writeT2604),
    finished('T-2605', writeT2605),
    open('T-2606', writeT2606),
    open('T-2607', writeT2607),
    open('T-2609', writeT2609),
    open('T-2610', writeT2610),
    open('T-2613', writeT2613),
    finished('T-2614', writeT2614),
    open('T-2616', writeT2616),
    open('T-2617', writeT2617),
    finished('T-2620', writeT2620),
  ]
}

type Written = Omit<DemoOrder, 'number'>

const whenLookedAt = (number: string, write: () => Written): DemoOrder => {
  let known: Written | null = null
  const written = (): Written => {
    known ??= write()
    return known
  }
  return {
    number,
    get orderId() {
      return written().orderId
    },
    get lines() {
      return written().lines
    },
    get entries() {
      return written().entries
    },
    get money() {
      return written().money
    },
    get links() {
      return written().links
    },
    get photos() {
      return written().photos
    },
    get end() {
      return written().end
    },
  }
}

const writtenBy = (pen: OrderPen, links: readonly DemoLink[], end: DemoEnd | null): Written => ({
  orderId: pen.orderId,
  lines: pen.lines(),
  entries: pen.entries(),
  money: pen.moneySides(),
  links,
  photos: pen.photos(),
  end,
})
