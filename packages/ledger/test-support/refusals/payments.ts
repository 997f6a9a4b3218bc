import { readySteps } from '../../src/questions/gates.ts'
import { seal } from '../money.ts'
import { handBack, oneSensorJob, opening, workUntil } from '../one-sensor-job.ts'
import { type OrderPen, orderPen } from '../order-pen.ts'
import { idOf, wordsOf } from '../seeded-ids.ts'
import { manager, technician } from '../shop.ts'
import { closingOf } from '../step-payload.ts'
import { desk, type Refusals } from './setting.ts'

const fifty = { amountCents: 5_000 }

const paid = (): { readonly pen: OrderPen; readonly paymentId: string } => {
  const pen = oneSensorJob('worked')
  const { id } = pen.write('payment.noted', { money: seal(fifty), method: 'cash', back: null }, desk)
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

const giveBack = ({
  cents = -3_000,
  method = 'cash',
  reason = true,
  times = 1,
  of,
}: {
  cents?: number
  method?: 'cash' | 'card'
  reason?: boolean
  times?: number
  of?: readonly string[]
}) => {
  const { pen } = paid()
  const back = reason ? { why: wordsOf('why'), of: [...(of ?? [seal(fifty)])] } : null
  const give = () =>
    pen.attempt(
      'payment.noted',
      { money: seal({ amountCents: cents }), method, back },
      { ...desk, by: manager },
    )
  for (let before = 1; before < times; before += 1) give()
  return give()
}

/** The proof drive of a job that is otherwise done. */
const driveFrom = (out: number, back: number, odometerConfirmed: boolean) => {
  const pen = oneSensorJob('decided')
  workUntil(pen, isProofDrive)
  const step = readySteps(pen.state()).find(({ stepKey }) => isProofDrive(stepKey))
  const drive = step && closingOf(pen.state(), step)
  if (drive?.kind !== 'drive.done') throw new RangeError('no drive is ready')
  return pen.attempt(
    'drive.done',
    { ...drive.payload, odometerOut: mi(out), odometerIn: mi(back), odometerConfirmed },
    { by: technician },
  )
}

const isProofDrive = (stepKey: string) => stepKey === 'vehicle.proof.drive'

const mi = (value: number) => ({ value, unit: 'mi' as const })

export const paymentsRefusals: Refusals<
  | 'PAYMENT_UNKNOWN'
  | 'PAYMENT_CHANGES_NOTHING'
  | 'REFUND_NOT_ALLOWED'
  | 'REFUND_UNCLEAR'
  | 'REFUND_OVER_PAID'
  | 'ODOMETER_IMPLAUSIBLE'
> = {
  PAYMENT_UNKNOWN: [
    ['a correction of a payment that is not there', () => correct({ paymentId: idOf('other'), cents: 1 })],
    ['a correction of what the payment does not say', () => correct({ replaces: seal({ amountCents: 1 }) })],
    ['money given back of a payment that is not there', () => giveBack({ of: [seal({ amountCents: 1 })] })],
    ['money given back a second time, beside somebody who was first', () => giveBack({ times: 2 })],
    ['money given back another way than it was paid', () => giveBack({ method: 'card' })],
  ],
  PAYMENT_CHANGES_NOTHING: [['a correction that corrects nothing', () => correct({})]],
  REFUND_UNCLEAR: [
    ['money given back without a reason', () => giveBack({ reason: false })],
    ['money received with a reason to give it back', () => giveBack({ cents: 100 })],
  ],
  REFUND_OVER_PAID: [
    [
      'more given back than was paid this way',
      () => giveBack({ cents: -5_001 }),
      { method: 'cash', leftCents: 5_000 },
    ],
  ],
  REFUND_NOT_ALLOWED: [
    [
      'an advisor who gives money back',
      () =>
        oneSensorJob('written-up').attempt(
          'payment.noted',
          { money: seal({ amountCents: -50_000 }), method: 'cash', back: null },
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
      () => oneSensorJob('sealed').attempt('order.handed_back', { ...handBack, odometer: mi(88_141) }, desk),
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
    [
      'a vehicle that comes with less than it left with at an earlier visit',
      () =>
        orderPen().attempt('order.opened', opening, {
          ...desk,
          facts: { earlierOdometer: { distance: mi(88_200), readAt: '2025-12-13T15:00:00.000Z' } },
        }),
      { why: 'lower', before: mi(88_200), daysAgo: 31 },
    ],
    [
      'a vehicle that comes with more than it can have been driven since',
      () =>
        orderPen().attempt('order.opened', opening, {
          ...desk,
          facts: { earlierOdometer: { distance: mi(80_000), readAt: '2026-01-11T15:30:00.000Z' } },
        }),
      { why: 'unlikely', before: mi(80_000), daysAgo: 1 },
    ],
    [
      'nothing but five nines that nobody has read twice',
      () => orderPen().attempt('order.opened', { ...opening, odometer: mi(99_999) }, desk),
      { why: 'nines' },
    ],
    [
      'an arrival that is written again over what our own drive read later',
      () =>
        oneSensorJob('worked').attempt(
          'odometer.read',
          { when: 'arrival', odometer: mi(88_150), confirmed: true },
          desk,
        ),
      { why: 'beyond-drive', before: mi(88_141) },
    ],
    [
      'a drive that begins at less than the vehicle came with',
      () => driveFrom(88_140, 88_150, false),
      { why: 'backwards', before: mi(88_141) },
    ],
    [
      'a drive that adds more than a visit does',
      () => driveFrom(88_141, 88_242, false),
      { why: 'unlikely', before: mi(88_141) },
    ],
  ],
}
