import type { Entry } from '@bayledger/ledger/entry'
import type { MoneySides } from '@bayledger/ledger/questions/money'
import type { DemoEnd } from './hand-back.ts'
import type { DemoLine, DemoPhoto, OrderPen } from './order-pen.ts'

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
  /** The number of the earlier order that must have ended before this one is opened, if it rests on one. */
  readonly after: string | null
  readonly orderId: string
  readonly lines: readonly DemoLine[]
  readonly entries: readonly Entry[]
  readonly money: MoneySides
  readonly links: readonly DemoLink[]
  readonly photos: readonly DemoPhoto[]
  /** The end that needs the shop's signing key: the loader seals, then hands back. `null`: still open. */
  readonly end: DemoEnd | null
}

type Written = Omit<DemoOrder, 'number' | 'after'>

/** An order that is written as soon as anybody looks at its entries. */
export const whenLookedAt = (
  number: string,
  write: () => Written,
  after: string | null = null,
): DemoOrder => {
  let known: Written | null = null
  const written = (): Written => {
    known ??= write()
    return known
  }
  return {
    number,
    after,
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

/** What a pen has written. */
export const writtenBy = (pen: OrderPen, links: readonly DemoLink[], end: DemoEnd | null): Written => ({
  orderId: pen.orderId,
  lines: pen.lines(),
  entries: pen.entries(),
  money: pen.moneySides(),
  links,
  photos: pen.photos(),
  end,
})
