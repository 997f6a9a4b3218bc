import { randomUUID } from 'node:crypto'
import type { AppendResult } from '@bayledger/contract/entries'
import { type Agreement, agreementOf, withProof } from '@bayledger/ledger/agreement'
import type { DraftOfKind } from '@bayledger/ledger/entry'
import { type PayloadOf, versionOf } from '@bayledger/ledger/registry'
import { namedOnly } from '@bayledger/ledger/second-person'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type PersonKey, people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { begunOrder } from '../support/begun-order.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { envelopeOf, replayOn } from '../support/replay-order.ts'
import { sideOf, type WriteEntry } from '../support/write-entry.ts'

/** One wheel from its tire's seat to the second person's check, over HTTP: every rule of the torque said and held. */
let shop: TestApp
let ines: Caller
let greta: Caller
let desk: Caller
let orderId: string
let write: WriteEntry
beforeAll(async () => {
  shop = await startTestApp()
  const order = await begunOrder(shop, 'T-2603')
  ;({ orderId, write } = order)
  desk = await order.as('ottoline', 'desk')
  ines = await order.as('ines', 'bay')
  greta = await order.as('greta', 'bay')
})
afterAll(() => shop.stop())

const accepted = { result: 'accepted' }
const refused = (code: string) => ({ result: 'refused', code, kept: true })

const wrench = (code: string) => {
  const found = shop.demo.instruments.find((instrument) => instrument.code === code)
  if (!found?.dueOn) throw new Error(`no wrench ${code}`)
  return {
    instrumentId: found.id,
    code,
    dueOn: found.dueOn,
    cyclesBefore: found.cycles,
    rangeLow: 30,
    rangeHigh: 250,
    rangeUnit: 'lbf·ft',
  } as const
}
const left = { shows: 'figures', unit: 'oz', inner: 0.25, outer: 0, balancedAgain: false } as const
/** 83 lbf·ft is the sheet's; the first round is at about half of it. */
const atHalf = { figure: { value: 45, unit: 'lbf·ft' as const } }
const round = (stepKey: string, change: object = {}) => ({
  stepKey,
  wheel: 'LF' as const,
  figure: { value: 83, unit: 'lbf·ft' as const },
  wrench: wrench('W-07'),
  clicked: 5,
  total: 5,
  moved: [],
  timed: null,
  ...change,
})
/** The check of the left front wheel that is made next: it keeps its id until it is sealed. */
let nextCheck: DraftOfKind<'torque.checked'>
/** Types a person's PIN for that check; `change` makes it one for something else. */
const checkProven = (caller: Caller, person: PersonKey, change: (agreesTo: Agreement) => Agreement) => {
  const { id: staffId, pin } = people[person]
  nextCheck = {
    id: randomUUID(),
    shopId: shop.demo.shop.id,
    orderId,
    kind: 'torque.checked',
    version: versionOf('torque.checked'),
    payload: { ...round('LF.studs.second-check'), checkedBy: namedOnly(staffId) },
    writtenBy: { kind: 'staff', staffId },
    deviceId: null,
    writtenAt: shop.clock.now().toISOString(),
    restsOn: [],
  }
  const agreesTo = agreementOf(nextCheck)
  if (agreesTo === null) throw new RangeError('the check names nobody')
  return caller.post('/api/second-person', { staffId, pin, agreesTo: change(agreesTo) })
}
const sealed = async (caller: Caller, token: string): Promise<AppendResult> => {
  const entries = [envelopeOf(withProof(nextCheck, token))]
  return (await caller.post('/api/entries', { entries, sides: [] }).expect(200)).body.results[0]
}
const halfRound = () => round('LF.studs.torque-half', atHalf)
const cyclesOf = async (code: string) => {
  const { body } = await desk.get('/api/instruments').expect(200)
  return body.instruments.find((instrument: { code: string }) => instrument.code === code).cycles
}

describe('one wheel, step by step', () => {
  it('refuses a step out of its order, and says which comes first', async () => {
    const result = await write(ines, 'step.closed', { stepKey: 'LF.tire.balance', value: left })
    expect(result).toMatchObject(refused('STEP_OUT_OF_ORDER'))
    expect('words' in result && result.words).toMatch(/^First: /)
    expect(
      await write(ines, 'wheel.mounted', {
        stepKey: 'LF.wheel.on',
        wheel: 'LF',
        cameFrom: 'LF',
        seatsMatch: true,
        handStarted: true,
      }),
    ).toMatchObject(refused('STEP_OUT_OF_ORDER'))
  })

  it('refuses a step on another wheel, of another kind, and one that is not planned', async () => {
    const leak = { stepKey: 'LF.tire.leak', wheel: 'RR', tight: true, where: null } as const
    expect(await write(ines, 'leak.checked', leak)).toMatchObject(refused('STEP_ON_OTHER_WHEEL'))
    expect(await write(ines, 'step.closed', { stepKey: 'LF.tire.leak', value: null })).toMatchObject(
      refused('STEP_OF_OTHER_KIND'),
    )
    expect(await write(ines, 'step.closed', { stepKey: 'RF.tire.seat', value: null })).toMatchObject(
      refused('STEP_NOT_PLANNED'),
    )
  })

  it('takes the steps in their order, each once', async () => {
    await write(ines, 'step.closed', { stepKey: 'LF.sensor.read-in-rim', value: 'answers, no pressure' })
    expect(await write(ines, 'step.closed', { stepKey: 'LF.tire.seat', value: '38' })).toMatchObject(accepted)
    expect(await write(ines, 'step.closed', { stepKey: 'LF.tire.seat', value: '38' })).toMatchObject(
      refused('STEP_ALREADY_CLOSED'),
    )
    const core = { stepKey: 'LF.tire.core', value: '4 lbf·in' }
    expect(await write(ines, 'step.closed', { ...core, value: null })).toMatchObject(
      refused('STEP_VALUE_MISSING'),
    )
    expect(await write(ines, 'step.closed', core)).toMatchObject(accepted)
    await write(ines, 'step.closed', { stepKey: 'LF.tire.inflate', value: '33 psi' })
    await write(ines, 'leak.checked', { stepKey: 'LF.tire.leak', wheel: 'LF', tight: true, where: null })
    const balance = { stepKey: 'LF.tire.balance', value: left }
    const over = { ...left, inner: 0.75 }
    expect(await write(ines, 'step.closed', { ...balance, value: over })).toMatchObject(
      refused('BALANCE_UNCLEAR'),
    )
    await write(ines, 'step.closed', balance)
    expect(
      await write(ines, 'wheel.mounted', {
        stepKey: 'LF.wheel.on',
        wheel: 'LF',
        cameFrom: 'LF',
        seatsMatch: true,
        handStarted: true,
      }),
    ).toMatchObject(accepted)
  })

  it('lowers no vehicle while a wheel that is to come off has not gone on again', async () => {
    const lower = { stepKey: 'vehicle.lift.touching', value: null }
    expect(await write(ines, 'step.closed', lower)).toMatchObject(refused('STEP_OUT_OF_ORDER'))
    expect(await write(ines, 'studs.torqued', { ...halfRound(), round: 'half' })).toMatchObject(
      refused('STEP_OUT_OF_ORDER'),
    )
    const reason = sideOf('The right rear sensor is late.')
    const aside = { stepKey: 'RR.wheel.on', reason: reason.digest }
    expect(await write(ines, 'step.set_aside', aside, [reason])).toMatchObject(accepted)
    expect(await write(ines, 'step.closed', lower)).toMatchObject(accepted)
  })

  it.each([
    [
      '12 where the sheet says 83',
      { figure: { value: 12, unit: 'lbf·ft' } },
      'TORQUE_DIFFERS_FROM_SHEET',
      /By the sheet this round is at 45 lbf·ft; 12/,
    ],
    [
      'the whole figure, the first time',
      { figure: { value: 83, unit: 'lbf·ft' } },
      'TORQUE_DIFFERS_FROM_SHEET',
      /By the sheet this round is at 45 lbf·ft; 83/,
    ],
    [
      '45 in another unit',
      { figure: { value: 45, unit: 'N·m' } },
      'TORQUE_DIFFERS_FROM_SHEET',
      /45 N·m was recorded/,
    ],
    ['four of five nuts', { clicked: 4 }, 'TORQUE_ROUND_INCOMPLETE', /4 of 5 clicked/],
    ['another number of nuts', { clicked: 6, total: 6 }, 'TORQUE_ROUND_INCOMPLETE', /5 nuts a wheel/],
  ])('refuses a round with %s', async (_, change, code, words) => {
    const result = await write(ines, 'studs.torqued', {
      ...round('LF.studs.torque-half', { ...atHalf, ...change }),
      round: 'half',
    } as PayloadOf<'studs.torqued'>)
    expect(result).toMatchObject(refused(code))
    expect('words' in result && result.words).toMatch(words)
  })

  it('refuses a wrench that is overdue, and one that is not registered', async () => {
    const overdue = { ...halfRound(), wrench: wrench('W-05'), round: 'half' as const }
    expect(await write(ines, 'studs.torqued', overdue)).toMatchObject(refused('WRENCH_OVERDUE'))
    const unknown = { ...overdue, wrench: { ...wrench('W-07'), instrumentId: randomUUID() } }
    expect(await write(ines, 'studs.torqued', unknown)).toMatchObject(refused('WRENCH_UNKNOWN'))
  })

  it('counts the clicks of each sealed round on its wrench, and of none that was refused', async () => {
    const before = await cyclesOf('W-07')
    for (const name of ['half', 'full', 'again'] as const)
      expect(
        await write(ines, 'studs.torqued', {
          ...round(`LF.studs.torque-${name}`, name === 'half' ? atHalf : {}),
          round: name,
        }),
      ).toMatchObject(accepted)
    expect(await cyclesOf('W-07')).toBe(before + 15)
  })

  it('takes no torque check without the PIN of whoever made it, signed in or not', async () => {
    const check = (checkedBy: PayloadOf<'torque.checked'>['checkedBy']) => ({
      ...round('LF.studs.second-check'),
      checkedBy,
    })
    const unproven = refused('SECOND_PERSON_UNPROVEN')
    expect(await write(greta, 'torque.checked', check(null))).toMatchObject(unproven)
    expect(await write(greta, 'torque.checked', check(namedOnly(people.greta.id)))).toMatchObject(unproven)
    const { body } = await checkProven(greta, 'devin', (agreesTo) => agreesTo).expect(422)
    expect(body).toMatchObject({ code: 'SECOND_PERSON_REFUSED' })
  })

  it('refuses the PIN that was typed for another step or another wheel', async () => {
    for (const elsewhere of [{ entryId: randomUUID() }, { digest: '0'.repeat(64) }]) {
      const { token } = (
        await checkProven(ines, 'greta', (agreesTo) => ({ ...agreesTo, ...elsewhere })).expect(201)
      ).body
      expect(await sealed(ines, token)).toMatchObject(refused('SECOND_PERSON_UNPROVEN'))
    }
  })

  it('refuses the doer as second person, also on another tablet, and accepts someone else on the doer’s own', async () => {
    const doer = refused('SECOND_PERSON_IS_DOER')
    const otherTablet = await (await shop.tablet()).signIn('ines')
    for (const caller of [ines, otherTablet, greta]) {
      const { token } = (await checkProven(caller, 'ines', (agreesTo) => agreesTo).expect(201)).body
      expect(await sealed(caller, token)).toMatchObject(doer)
    }
    const { token } = (await checkProven(ines, 'greta', (agreesTo) => agreesTo).expect(201)).body
    expect(await sealed(ines, token)).toMatchObject(accepted)
    const entries = (await desk.get(`/api/orders/${orderId}`).expect(200)).body.entries
    expect(entries.at(-1)).toMatchObject({
      kind: 'torque.checked',
      writtenBy: { staffId: people.ines.id },
      payload: { checkedBy: { staffId: people.greta.id } },
    })
  })

  it('draws a part from stock and puts it back when the entry is withdrawn', async () => {
    const onHand = async () => {
      const item = await shop.deps.prisma.stockItem.findFirstOrThrow({ where: { partNumber: 'TS-315-C' } })
      return item.onHand
    }
    const before = await onHand()
    const drawn = await write(ines, 'part.drawn', {
      stepKey: 'RR.sensor.match',
      wheel: 'RR',
      partNumber: 'TS-315-C',
      lot: null,
      madeMonth: null,
      quantity: 1,
      matches: { frequencyMHz: 315, stem: 'clamp-in' },
    })
    expect(drawn).toMatchObject(accepted)
    expect(await onHand()).toBe(before - 1)
    expect(
      await write(ines, 'entry.struck', {
        entryId: drawn.id,
        reason: 'undone',
        words: null,
        secondPerson: null,
      }),
    ).toMatchObject(accepted)
    expect(await onHand()).toBe(before)
  })

  it('refuses a part for another frequency', async () => {
    expect(
      await write(ines, 'part.drawn', {
        stepKey: 'RR.sensor.match',
        wheel: 'RR',
        partNumber: 'TS-433-C',
        lot: null,
        madeMonth: null,
        quantity: 1,
        matches: { frequencyMHz: 433.92, stem: 'clamp-in' },
      }),
    ).toMatchObject(refused('PART_DOES_NOT_MATCH'))
  })

  it('refuses a part that the register holds back', async () => {
    const result = await write(ines, 'part.drawn', {
      stepKey: 'RR.sensor.match',
      wheel: 'RR',
      partNumber: 'TS-433-S-SET',
      lot: null,
      madeMonth: null,
      quantity: 1,
      matches: { frequencyMHz: null, stem: null },
    })
    expect(result).toMatchObject(refused('PART_DOES_NOT_MATCH'))
    expect('words' in result && result.words).toContain('wipe it before it counts as blank')
  })

  it('lets only the writer undo, and never a sealed torque', async () => {
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    const idOf = (kind: string) => body.entries.findLast((entry: { kind: string }) => entry.kind === kind).id
    const undo = (entryId: string) => ({
      entryId,
      reason: 'undone' as const,
      words: null,
      secondPerson: null,
    })
    expect(await write(greta, 'entry.struck', undo(idOf('wheel.mounted')))).toMatchObject(
      refused('STRIKE_NOT_OWN'),
    )
    expect(await write(ines, 'entry.struck', undo(idOf('studs.torqued')))).toMatchObject(
      refused('STRIKE_NEEDS_SECOND_PERSON'),
    )
  })

  it('shows on the vehicle’s page until when the new sensor is covered, by the usual terms', async () => {
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    const page = (await desk.get(`/api/vehicles/${body.vehicle.vehicleId}/page`).expect(200)).body
    // 24 months after the demo day; the odometer was read when the vehicle came.
    expect(page.fitted[0].warranty).toMatchObject({
      ...{ cover: 'covered', until: '2028-01-12', untilMiles: expect.any(Number) },
    })
  })

  it('finds the vehicle with its open order by the tail of the sensor that was fitted', async () => {
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    const fitted = body.entries.find((entry: { kind: string }) => entry.kind === 'sensor.fitted').payload
      .sensorId
    const { hits } = (await desk.get(`/api/search?q=${fitted.slice(-6)}`).expect(200)).body
    expect(hits).toContainEqual(
      expect.objectContaining({ kind: 'vehicle', orderId, isOpen: true, matched: 'sensor-id' }),
    )
    const byNumber = (await desk.get(`/api/search?q=${body.number.toLowerCase()}`).expect(200)).body.hits
    const { rows } = (await desk.get('/api/floor').expect(200)).body
    const [move] = rows.find((row: { orderId: string }) => row.orderId === orderId).moves
    expect(byNumber[0]).toMatchObject({
      kind: 'order',
      orderId,
      waitsFor: move.words,
      matched: 'order-number',
    })
  })
})

describe('a sensor that is programmed', () => {
  it('never gets the ID of one on another vehicle, with however many zeros it is typed', async () => {
    const replay = await replayOn(shop)
    const { lines } = freshCopy(shop.demo, 'T-2602')
    await replay.sendUntil(lines, ({ draft }) => draft.kind === 'diagnosis.issued')
    await write(ines, 'part.drawn', {
      stepKey: 'RR.sensor.match',
      wheel: 'RR',
      partNumber: 'TS-315-C',
      lot: null,
      madeMonth: null,
      quantity: 1,
      matches: { frequencyMHz: 315, stem: 'clamp-in' },
    })
    const result = await write(ines, 'sensor.programmed', {
      stepKey: 'RR.sensor.program',
      wheel: 'RR',
      sensorId: '003c41a07e',
      identity: 'new',
      frequencyMHz: 315,
      readBack: true,
    })
    expect(result).toMatchObject(refused('SENSOR_ID_TAKEN'))
    expect('words' in result && result.words).toContain('another vehicle')
  })
})

describe('an estimate', () => {
  it('that was decided at the desk cannot be decided again', async () => {
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    const decided = body.entries.find((entry: { kind: string }) => entry.kind === 'estimate.decided')
    const again = {
      id: randomUUID(),
      orderId,
      kind: decided.kind,
      version: decided.version,
      payload: decided.payload,
      writtenAt: decided.writtenAt,
      restsOn: [],
    }
    const reply = await desk.post('/api/entries', { entries: [again], sides: [] }).expect(200)
    expect(reply.body.results[0]).toMatchObject(refused('BUNDLE_ALREADY_DECIDED'))
  })
})
