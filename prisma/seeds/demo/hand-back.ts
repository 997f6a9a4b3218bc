import type { Draft } from '@bayledger/ledger/entry'
import { drafted, recorded } from '@bayledger/ledger/fold/foldable'
import type { OrderState } from '@bayledger/ledger/state'
import type { DemoLine, OrderPen } from './order-pen.ts'
import type { DemoPerson } from './people.ts'

/** How an order ends once the server has sealed its report: keys, odometer, signature for receipt. */
export type DemoEnd = { readonly sealedAt: string; readonly sealedBy: string; readonly handBack: DemoLine }

type HandBack = {
  readonly by: DemoPerson
  readonly sealedAt: string
  readonly at: string
  readonly odometerMiles: number
  /** `null`: would not sign. */
  readonly signedBy: string | null
  /** The second person who agreed to a release before the cure is proven. */
  readonly releaseAgreedBy: DemoPerson | null
  /** Whether the customer was told to have the torque checked; absent: no wheel was off. */
  readonly retorqueAdvised?: boolean
}

export const endOf = (pen: OrderPen, end: HandBack): DemoEnd => ({
  sealedAt: pen.calendar.at(end.sealedAt),
  sealedBy: end.by.id,
  handBack: pen.line(
    'order.handed_back',
    {
      odometer: { value: end.odometerMiles, unit: 'mi' },
      odometerConfirmed: false,
      lockingKeyReturned: null,
      retorqueAdvised: end.retorqueAdvised ?? false,
      signature: end.signedBy === null ? null : pen.personal(end.signedBy),
      releaseAgreedBy: end.releaseAgreedBy && pen.agreedBy(end.releaseAgreedBy),
    },
    { at: end.at, by: end.by },
  ),
})

/** The order as later visits find it: the server seals the report and gives the keys back, so the pen does not know of it. */
export const withKeysBack = (state: OrderState, draft: Draft): OrderState =>
  draft.kind === 'order.handed_back'
    ? { ...state, handedBack: recorded(draft.payload, drafted(draft, state.seq)) }
    : state
