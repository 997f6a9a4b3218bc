import type { PayloadOf } from '@bayledger/ledger/registry'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { begunOrder } from '../support/begun-order.ts'
import { sideOf, type WriteEntry } from '../support/write-entry.ts'

/** Something that is not right, over HTTP: who may write it, what it shuts, what is refused, how it is withdrawn. */
let shop: TestApp
let ines: Caller
let desk: Caller
let orderId: string
let write: WriteEntry
beforeAll(async () => {
  shop = await startTestApp()
  const order = await begunOrder(shop, 'T-2603')
  ;({ orderId, write } = order)
  desk = await order.as('ottoline', 'desk')
  ines = await order.as('ines', 'bay')
})
afterAll(() => shop.stop())

const look: PayloadOf<'tire.inspected'> = {
  when: 'arrival',
  stepKey: null,
  wheel: 'LF',
  valve: null,
  stem: null,
  treadDepth32nds: null,
  tireAgeYears: null,
  sensorAgeMonths: null,
  sealantSeen: null,
  tireDamage: ['puncture'],
  fastenerDamage: null,
  inside: null,
}
const hole = { place: 'crown', millimeters: 5, degrees: 0, overlapsRepair: false } as const

describe('what is not right', () => {
  it('needs its wheel, and the wheel of its step', async () => {
    const found = { stepKey: null, wheel: null, what: 'stud', words: null } as const
    expect(await write(ines, 'trouble.found', found)).toMatchObject({ code: 'TROUBLE_WITHOUT_WHEEL' })
    expect(
      await write(ines, 'trouble.found', { ...found, stepKey: 'LF.tire.seat', wheel: 'RR' }),
    ).toMatchObject({ code: 'STEP_ON_OTHER_WHEEL' })
  })

  it('comes with its words, or not at all', async () => {
    const words = sideOf('snapped off at the flange')
    const found = { stepKey: null, wheel: 'LF', what: 'stud', words: words.digest } as const
    expect(await write(ines, 'trouble.found', found)).toMatchObject({ result: 'refused' })
  })

  it('shuts the steps of its wheel until it is withdrawn with a reason', async () => {
    const words = sideOf('snapped off at the flange')
    const found = { stepKey: 'LF.tire.seat', wheel: 'LF', what: 'stud', words: words.digest } as const
    const { id, ...taken } = await write(ines, 'trouble.found', found, [words])
    expect(taken).toMatchObject({ result: 'accepted' })
    const read = { stepKey: 'LF.sensor.read-in-rim', value: 'answers, no pressure' }
    const mounted = {
      stepKey: 'LF.wheel.on',
      wheel: 'LF',
      cameFrom: 'LF',
      seatsMatch: true,
      handStarted: true,
    } as const
    expect(await write(ines, 'step.closed', read)).toMatchObject({ code: 'WHEEL_PARKED' })
    expect(await write(ines, 'wheel.mounted', mounted)).toMatchObject({ result: 'refused' })
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    expect(JSON.stringify(body)).toContain('snapped off at the flange')
    expect(
      await write(ines, 'entry.struck', { entryId: id, reason: 'undone', words: null, secondPerson: null }),
    ).toMatchObject({ result: 'accepted' })
    expect(await write(ines, 'step.closed', read)).toMatchObject({ result: 'accepted' })
  })
})

describe('a hole in a tire', () => {
  it('of 60 mm is no puncture, and the reply says what to do', async () => {
    const wide = { ...look, punctures: [{ ...hole, millimeters: 60 }] }
    const result = await write(ines, 'tire.inspected', wide)
    expect(result).toMatchObject({ code: 'PUNCTURE_IMPOSSIBLE' })
    expect('words' in result && result.words).toMatch(/60 mm.*Measure it again, or record a cut/)
  })

  it('beside a look that saw no puncture is refused', async () => {
    expect(
      await write(ines, 'tire.inspected', { ...look, tireDamage: ['bulge'], punctures: [hole] }),
    ).toMatchObject({ code: 'PUNCTURE_CONTRADICTED' })
  })
})
