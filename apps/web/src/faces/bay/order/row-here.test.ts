import type { FloorRow } from '@bayledger/contract/orders'
import { readySteps } from '@bayledger/ledger/questions/gates'
import { expect, it } from 'vitest'
import { oneSensorJob, workUntil } from '../../../../../../packages/ledger/test-support/one-sensor-job.ts'
import { tablet, technician } from '../../../../../../packages/ledger/test-support/shop.ts'
import { closingOf } from '../../../../../../packages/ledger/test-support/step-payload.ts'
import type { OrderReply } from '../../../ledger/order.ts'
import type { Parcel } from '../../../ledger/parcel.ts'
import { rowHere } from './row-here.ts'

const now = '2026-01-12T18:00:00.000Z'

it('a row of the list says what follows from what was written here, sent or not', () => {
  const pen = oneSensorJob('decided')
  workUntil(pen, (key) => key === 'RR.wheel.off')
  const step = readySteps(pen.state()).find(({ stepKey }) => stepKey === 'RR.wheel.off')
  if (!step) throw new RangeError('the wheel is not to come off')
  const order = { orderId: pen.orderId, entries: pen.entries(), sides: [] } as unknown as OrderReply
  const { kind, payload } = closingOf(pen.state(), step)
  const { shopId: _, writtenBy: __, deviceId: ___, ...entry } = pen.draft(kind, payload, { by: technician })
  const parcel = {
    orderId: pen.orderId,
    entries: [entry],
    sides: [],
    staffId: technician.id,
    deviceId: tablet,
  } as unknown as Parcel
  const row = { orderId: pen.orderId, moves: [], assignedTo: null } as unknown as FloorRow

  expect(rowHere(row, order, [], now)).toBe(row)
  expect(rowHere(row, undefined, [parcel], now)).toBe(row)
  expect(rowHere(row, order, [parcel], now).moves[0]).toMatchObject({
    code: 'wheel-off',
    wheel: 'RR',
    words: 'Right rear wheel is off.',
  })
})
