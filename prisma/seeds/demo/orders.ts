import { stateOf } from '@bayledger/ledger/append'
import type { DemoCalendar } from './calendar.ts'
import type { EarlierNumber } from './earlier.ts'
import { type DemoEnd, withKeysBack } from './hand-back.ts'
import type { DemoInstrument } from './instruments.ts'
import { type KnownBefore, type OrderPen, orderPen } from './order-pen.ts'
import { writeT2601 } from './orders/t-2601.ts'
import { t2602Link, writeT2602 } from './orders/t-2602.ts'
import { writeT2603 } from './orders/t-2603.ts'
import { writeT2604 } from './orders/t-2604.ts'
import { writeT2605 } from './orders/t-2605.ts'
import { writeT2606 } from './orders/t-2606.ts'
import { writeT2607 } from './orders/t-2607.ts'
import { writeT2608 } from './orders/t-2608.ts'
import { writeT2609 } from './orders/t-2609.ts'
import { writeT2610 } from './orders/t-2610.ts'
import { writeT2611 } from './orders/t-2611.ts'
import { writeT2612 } from './orders/t-2612.ts'
import { writeT2613 } from './orders/t-2613.ts'
import { writeT2614 } from './orders/t-2614.ts'
import { writeT2615 } from './orders/t-2615.ts'
import { writeT2616 } from './orders/t-2616.ts'
import { writeT2617 } from './orders/t-2617.ts'
import { writeT2618 } from './orders/t-2618.ts'
import { writeT2619 } from './orders/t-2619.ts'
import { writeT2620 } from './orders/t-2620.ts'
import { shopId } from './places.ts'
import { sensorSets } from './sensor-sets.ts'
import { type DemoLink, type DemoOrder, whenLookedAt, writtenBy } from './written-order.ts'

/** What an order rests on: an earlier order that has ended, or what else is known of its vehicle. */
type Before = { readonly after?: EarlierNumber; readonly known?: KnownBefore }

/**
 * The orders of the demo day, each written through the ledger's own `append` and therefore admitted by it: as soon as anybody
 * looks at its entries. `earlier` are the orders that some of them rest on.
 */
export const demoOrders = (
  calendar: DemoCalendar,
  instruments: readonly DemoInstrument[],
  earlier: readonly DemoOrder[],
): readonly DemoOrder[] => {
  const knownAfter = (number: EarlierNumber): KnownBefore => {
    const visit = earlier.find((one) => one.number === number)
    if (!visit?.end) throw new RangeError(`the demo has no finished earlier order ${number}`)
    const state = stateOf(visit.entries, shopId, visit.orderId)
    return { visits: [withKeysBack(state, visit.end.handBack.draft)], idsOnOtherVehicles: [] }
  }
  const open = (
    number: string,
    write: (pen: OrderPen) => void,
    { after, known, links = [] }: Before & { readonly links?: readonly DemoLink[] } = {},
  ): DemoOrder =>
    whenLookedAt(
      number,
      () => {
        const pen = orderPen(number, calendar, instruments, after ? knownAfter(after) : known)
        write(pen)
        return writtenBy(pen, links, null)
      },
      after,
    )
  const finished = (number: string, write: (pen: OrderPen) => DemoEnd, { after }: Before = {}): DemoOrder =>
    whenLookedAt(
      number,
      () => {
        const pen = orderPen(number, calendar, instruments, after && knownAfter(after))
        return writtenBy(pen, [], write(pen))
      },
      after,
    )
  const link: DemoLink = {
    linkId: t2602Link.linkId,
    sentBy: t2602Link.sentBy.id,
    sentAt: calendar.at(t2602Link.sentAt),
    openings: [{ id: t2602Link.openingId, openedAt: calendar.at(t2602Link.openedAt) }],
  }
  const wheelOfLinnetG: KnownBefore = { visits: [], idsOnOtherVehicles: [sensorSets.linnetG.RF] }
  return [
    finished('T-2601', writeT2601),
    open('T-2602', writeT2602, { links: [link] }),
    open('T-2603', writeT2603),
    open('T-2604', writeT2604),
    finished('T-2605', writeT2605),
    open('T-2606', writeT2606),
    open('T-2607', writeT2607),
    open('T-2608', writeT2608, { after: 'T-2596' }),
    open('T-2609', writeT2609),
    open('T-2610', writeT2610),
    open('T-2611', writeT2611, { after: 'T-2594' }),
    finished('T-2612', writeT2612),
    open('T-2613', writeT2613),
    finished('T-2614', writeT2614),
    finished('T-2615', writeT2615, { after: 'T-2600' }),
    open('T-2616', writeT2616),
    open('T-2617', writeT2617),
    open('T-2618', writeT2618, { known: wheelOfLinnetG }),
    open('T-2619', writeT2619),
    finished('T-2620', writeT2620),
  ]
}
