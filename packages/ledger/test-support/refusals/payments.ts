import { seal } from '../money.ts'
import { oneSensorJob, opening } from '../one-sensor-job.ts'
import { type OrderPen, orderPen } from '../order-pen.ts'
import { idOf, wordsOf } from '../seeded-ids.ts'
import { desk, type Refusals } from './setting.ts'

const fifty = { amountCents: 5_000 }

const paid = (): { readonly pen: OrderPen; readonly paymentId: string } => {
  const pen = oneSensorJob('worked')
  const { id } = pen.write('payment.noted', { money: seal(fifty), method: 'cash' }, desk)
  return { pen, paymentId: id }
}

const correct = (change: {
  paymentId?: string
  replaces?: string
  cents?: number
  method?: 'cash' | 'card'
}) => {
  const { pen, paymentId } = paid()
  return pen.attempt(
    'payment.corrected',
    {
      paymentId: change.paymentId ?? paymentId,
      replaces: change.replaces ?? seal(fifty),
      money: seal({ amountCents: change.cents ?? 5_000 }),
      method: change.method ?? 'cash',
      why: wordsOf('why'),
    },
    desk,
  )
}

const mi = (value: number) => ({ value, unit: 'mi' as const })

export const paymentsRefusals: Refusals<
  'PAYMENT_UNKNOWN' | 'PAYMENT_CHANGES_NOTHING' | 'REFUND_NOT_ALLOWED' | 'ODOMETER_IMPLAUSIBLE'
> = {
  PAYMENT_UNKNOWN: [
    ['a correction of a payment that is not there', () => correct({ paymentId: idOf('other'), cents: 1 })],
    ['a correction of what the payment does not say', () => correct({ replaces: seal({ amountCents: 1 }) })],
  ],
  PAYMENT_CHANGES_NOTHING: [['a correction that corrects nothing', () => correct({})]],
  REFUND_NOT_ALLOWED: [
    [
      'an advisor who gives money back',
      () =>
        oneSensorJob('written-up').attempt(
          'payment.noted',
          { money: seal({ amountCents: -50_000 }), method: 'cash' },
          desk,
        ),
      { roles: ['manager', 'owner'] },
    ],
    [
      'an advisor who makes a payment smaller by correcting it',
      () => correct({ cents: 4_999 }),
      { roles: ['manager', 'owner'] },
    ],
  ],
  ODOMETER_IMPLAUSIBLE: [
    [
      'a vehicle that comes with nothing but nines',
      () => orderPen().attempt('order.opened', { ...opening, odometer: mi(999_999) }, desk),
      { why: 'impossible', before: null },
    ],
    [
      'a vehicle that leaves with less than it came with',
      () =>
        oneSensorJob('written-up').attempt(
          'odometer.read',
          { when: 'leaving', odometer: mi(88_140), confirmed: true },
          desk,
        ),
      { why: 'backwards', before: mi(88_141) },
    ],
    [
      'a hand-back that reads less than the end of our own drive',
      () =>
        oneSensorJob('sealed').attempt(
          'order.handed_back',
          {
            odometer: mi(88_141),
            lockingKeyReturned: null,
            retorqueAdvised: true,
            signature: null,
            releaseAgreedBy: null,
          },
          desk,
        ),
      { why: 'backwards', read: mi(88_141) },
    ],
    [
      'an unlikely figure that nobody has confirmed',
      () =>
        oneSensorJob('written-up').attempt(
          'odometer.read',
          { when: 'arrival', odometer: mi(881_410), confirmed: false },
          desk,
        ),
      { why: 'unlikely', before: null },
    ],
  ],
}
