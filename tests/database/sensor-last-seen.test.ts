import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { readEntryFacts } from '../../apps/api/src/features/entries/store/read-facts.ts'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import { startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

let shop: TestApp
beforeAll(async () => {
  shop = await startTestApp()
})
afterAll(() => shop.stop())

const sensorId = '6E0FA3B2'

const opened = ({ draft }: DemoLine) => draft.kind === 'order.opened'
const heard = ({ draft }: DemoLine) =>
  draft.kind === 'wheel.checked' && draft.payload.sensor?.answer === 'answered'

/** The line with which a tablet hears this sensor on the vehicle of an order, under an id of the test's choosing. */
const hears = (lines: readonly DemoLine[], id: string): DemoLine => {
  const line = lines.find(heard)
  if (line?.draft.kind !== 'wheel.checked' || line.draft.payload.sensor?.answer !== 'answered')
    throw new Error('no sensor was heard in this order')
  const { payload } = line.draft
  const sensor = { ...line.draft.payload.sensor, id: sensorId }
  return { ...line, draft: { ...line.draft, id, payload: { ...payload, sensor } } }
}

const vehicleOf = (lines: readonly DemoLine[]): string => {
  const first = lines.find(opened)
  if (first?.draft.kind !== 'order.opened') throw new Error('the order was never opened')
  return first.draft.payload.vehicleId
}

it('a sensor was seen last where the server heard of it last, whatever ids the tablets gave', async () => {
  const replay = await replayOn(shop)
  const [moor, tarn] = [freshCopy(shop.demo, 'T-2603'), freshCopy(shop.demo, 'T-2602')]
  const onOthers = async (lines: readonly DemoLine[], apartFromOrder: string | null = null) => [
    ...(
      await readEntryFacts(shop.deps.pool, shop.demo.shop.id, {
        restsOn: [],
        sensorIds: [sensorId],
        wrenchIds: [],
        vehicleId: vehicleOf(lines),
        apartFromOrder,
        secondPersonTokens: [],
        vouchingTablet: null,
        sheet: null,
      })
    ).idsOnOtherVehicles,
  ]

  // The clock of the first tablet is years ahead, so that its id is later than every other.
  await replay.sendUntil(moor.lines, heard)
  const ahead = `ffffffff-ffff-7fff-bfff-${randomUUID().slice(-12)}`
  expect(await replay.send(hears(moor.lines, ahead))).toMatchObject({ result: 'accepted' })
  expect(await onOthers(moor.lines)).toEqual([])
  expect(await onOthers(tarn.lines)).toEqual([sensorId])

  await replay.sendUntil(tarn.lines, heard)
  expect(await replay.send(hears(tarn.lines, randomUUID()))).toMatchObject({ result: 'accepted' })
  expect(await onOthers(tarn.lines)).toEqual([])
  expect(await onOthers(moor.lines)).toEqual([sensorId])
  // To the order that has just heard it, it is still on the vehicle that had it before.
  expect(await onOthers(tarn.lines, tarn.orderId)).toEqual([sensorId])
})
