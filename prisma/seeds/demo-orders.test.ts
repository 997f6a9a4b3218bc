import { canonicalText, sideDigest } from '@bayledger/ledger/digests'
import { parseDraft } from '@bayledger/ledger/draft'
import type { Draft, DraftOfKind } from '@bayledger/ledger/entry'
import { verifyChain } from '@bayledger/ledger/hash-chain'
import { ledgerPen, provenBy } from '@bayledger/ledger/ledger-pen'
import { proofOf, roadGate, sealGate } from '@bayledger/ledger/questions/gates'
import { bundleTotals, dueCents, owedCents } from '@bayledger/ledger/questions/money'
import { nextMoves } from '@bayledger/ledger/questions/moves'
import { pressureTargetFor } from '@bayledger/ledger/questions/pressure-target'
import { roadPositions } from '@bayledger/reckoning/wheels'
import { describe, expect, it } from 'vitest'
import {
  all,
  everyOrder,
  findings,
  gauges,
  local,
  order,
  priced,
  shifted,
  shop,
  state,
} from './demo-orders.test-support.ts'

describe('the demo orders as the shop finds them at 11:40', () => {
  it('are the twenty of the morning, each with its number, and each of another vehicle', () => {
    const numbers = shop.orders.map(({ number }) => number)
    expect(numbers).toEqual(Array.from({ length: 20 }, (_, index) => `T-${2_601 + index}`))
    for (const { number } of everyOrder) expect(state(number).opened?.orderNumber).toBe(number)
    expect(new Set(numbers.map((number) => state(number).opened?.vehicleId)).size).toBe(20)
  })

  it('hold chains that verify from the first entry to the last', () => {
    for (const { entries } of everyOrder) expect(verifyChain(entries)).toEqual({ whole: true })
  })

  it('consist of drafts that the ledger can read from the wire', () => {
    for (const { lines } of everyOrder)
      for (const { draft } of lines) {
        const { shopId, writtenBy, deviceId, ...envelope } = draft
        expect(parseDraft(envelope, { shopId, writtenBy, deviceId })).toEqual({ ok: true, draft })
      }
  })

  it('name every personal word by a digest that its salt makes', () => {
    for (const { lines, end } of everyOrder)
      for (const { draft, sides } of [...lines, ...(end ? [end.handBack] : [])]) {
        for (const { digest, salt, text } of sides) {
          expect(sideDigest(text, Buffer.from(salt, 'base64'))).toBe(digest)
          expect(canonicalText(draft.payload)).toContain(digest)
          expect(canonicalText(draft.payload)).not.toContain(text)
        }
      }
  })

  it('are never written before the shop opens or after 11:40', () => {
    for (const { entries } of shop.orders)
      for (const { writtenAt } of entries) {
        expect(writtenAt >= '2026-01-12T12:00:00.000Z').toBe(true)
        expect(writtenAt <= '2026-01-12T16:40:00.000Z').toBe(true)
      }
  })
})

describe('the orders of the day', () => {
  it('are all twenty', () => {
    const twenty = Array.from({ length: 20 }, (_, index) => `T-${2601 + index}`)
    expect(shop.orders.map(({ number }) => number).toSorted()).toEqual(twenty)
  })
})

describe('T-2601, the cold morning', () => {
  it('finds weather and seepage on all four', () => {
    expect(gauges('T-2601')).toEqual([24.5, 24.3, 24.6, 24.4])
    expect(findings('T-2601')).toEqual([`weather-and-seepage@${all}`, 'spare-under-label@SP'])
    expect(state('T-2601').diagnosis?.diagnosis.primary).toBe('weather-and-seepage')
  })

  it('costs nothing', () => {
    expect(priced('T-2601')).toBe(0)
  })

  it('is set to 35.9 psi in tires of 48 °F and proven by a drive of 22 minutes', () => {
    for (const wheel of roadPositions) {
      const pressure = state('T-2601').work[wheel]?.pressure
      expect(pressure?.target.psi).toBeCloseTo(35.9, 1)
      expect(pressure?.target.quality).toBe('measured')
    }
    expect(proofOf(state('T-2601'))).toEqual({ verdict: 'proven', minutes: 22 })
  })

  it('may be sealed, and is finished once the keys are out', () => {
    const { orderId, entries, end } = order('T-2601')
    expect(sealGate(state('T-2601'))).toEqual([])
    if (!end) throw new Error('T-2601 has no end')
    const before = state('T-2601')
    const facts = (at: string, draft: Draft) => ({
      now: at,
      author: { kind: 'staff' as const, staffId: end.sealedBy },
      staff: new Map(shop.staff.map(({ id, roles }) => [id, roles])),
      secondPersons: provenBy(draft),
      refusedIds: new Set<string>(),
      wrenches: new Map(),
      gauges: new Set<string>(),
      gaugesInQuarantine: new Set<string>(),
      history: null,
      earlierOdometer: null,
      comebackIsOfVehicle: null,
      covers: null,
      vehicleIsOfCustomer: null,
      secondPersonRequired: true,
      discountLimits: { advisor: 0, lead: 0, manager: 0, owner: 0 },
      idsOnOtherVehicles: new Set<string>(),
      stock: new Map(),
      sheetsOnFile: new Set<string>(),
      money: new Map<string, string>(),
    })
    const seal: DraftOfKind<'report.sealed'> = {
      ...end.handBack.draft,
      id: '019bb301-0000-7000-8000-000000000001',
      kind: 'report.sealed',
      payload: {
        composedFrom: { seq: before.seq, hash: before.headHash },
        pdfSha256: '0'.repeat(64),
        templateVersion: 1,
        settingsVersion: 1,
        language: 'en',
        supersedes: null,
      },
      writtenAt: end.sealedAt,
    }
    const pen = ledgerPen(shop.shop.id, orderId, entries)
    const { draft, receivedAt } = end.handBack
    expect(pen.attempt(seal, facts(end.sealedAt, seal), { reportNumber: 'R-1' }).admitted).toBe(true)
    expect(pen.attempt(draft, facts(receivedAt, draft)).admitted).toBe(true)
    expect(nextMoves(pen.state(), shop.calendar.now)).toMatchObject([
      { mover: 'nobody', since: '2026-01-12T13:52:00.000Z' },
    ])
  })
})

describe('T-2602, the silent sensor', () => {
  it('finds the right rear sensor silent, and all four under the label', () => {
    expect(gauges('T-2602')).toEqual([32.8, 32.6, 32.7, 32.9])
    expect(findings('T-2602')).toEqual(['sensor-silent@RR', `under-placard@${all}`])
    expect(state('T-2602').diagnosis?.diagnosis.primary).toBe('sensor-silent')
  })

  it('is priced 203.40', () => {
    expect(state('T-2602').estimates.at(-1)?.scope.revision).toBe(1)
    expect(priced('T-2602')).toBe(20_340)
  })

  it('has waited 148 minutes for the customer, who opened the link at 09:20', () => {
    const [first] = nextMoves(state('T-2602'), shop.calendar.now)
    expect(first?.mover).toBe('customer')
    expect(minutesBetween(first?.since, shop.calendar.now)).toBe(148)
    expect(
      order('T-2602').links.map(({ sentAt, openings }) => [sentAt, openings.map(({ openedAt }) => openedAt)]),
    ).toEqual([['2026-01-12T14:12:00.000Z', ['2026-01-12T14:20:00.000Z']]])
  })
})

describe('T-2606, the sensor that reads wrong', () => {
  it('finds the left rear sensor 6.2 psi under its gauge, with the light off', () => {
    expect(gauges('T-2606')).toEqual([36.1, 36, 41.8, 41.7])
    expect(findings('T-2606')).toEqual(['sensor-reads-wrong@LR'])
    expect(state('T-2606').diagnosis?.diagnosis.primary).toBeNull()
  })

  it('is authorized for 207.60 at 11:02', () => {
    expect(priced('T-2606')).toBe(20_760)
    expect(
      Object.values(state('T-2606').answers).map(({ answer, written }) => [answer, written.writtenAt]),
    ).toEqual(Object.keys(state('T-2606').answers).map(() => ['authorized', '2026-01-12T16:02:00.000Z']))
  })

  it('waits for Rufus to match the part by scan', () => {
    expect(state('T-2606').assigned?.staffId).toBe(
      shop.staff.find(({ name }) => name === 'Rufus Kettleby')?.id,
    )
    const [first] = nextMoves(state('T-2606'), shop.calendar.now)
    expect(first).toMatchObject({
      mover: 'bay',
      wheel: 'LR',
      code: 'step-open',
      values: { step: { stepKey: 'LR.sensor.match' } },
    })
  })
})

describe('T-2610, the winter wheels', () => {
  it('finds another wheel set', () => {
    expect(gauges('T-2610')).toEqual([34.6, 34.5, 34.7, 34.4])
    expect(findings('T-2610')).toEqual([`other-wheel-set@${all}`])
  })

  it('is authorized for 95.55', () => {
    expect(priced('T-2610')).toBe(9_555)
    expect(Object.values(state('T-2610').answers).every(({ answer }) => answer === 'authorized')).toBe(true)
  })

  it('is out on the road with 13 of 20 minutes driven, its tires set to 37.5 psi at 52 °F', () => {
    expect(nextMoves(state('T-2610'), shop.calendar.now)).toMatchObject([{ mover: 'out-on-the-road' }])
    expect(proofOf(state('T-2610'))).toMatchObject({ verdict: 'not-yet-proven' })
    for (const wheel of roadPositions)
      expect(state('T-2610').work[wheel]?.pressure?.target.psi).toBeCloseTo(37.5, 1)
  })
})

describe('the other orders of the morning', () => {
  const expected = [
    [
      'T-2603',
      [31.6, 31.4, 31.5, 31.7],
      ['sensor-silent@LF+RR', `set-of-four-worth-offering@${all}`],
      'sensor-silent',
      32_490,
      'bay',
    ],
    ['T-2605', [36.2, 36, 33, 33.1], ['reset-only@'], 'reset-only', 2_730, 'desk'],
    ['T-2604', [54.2, 54, 64.1, 63.9], ['spare-low@SP'], 'spare-low', 0, 'bay'],
    [
      'T-2607',
      [41.2, 41, 41.1, 41.3],
      ['frequency-wrong@LF', 'stored-id-unheard@LF'],
      'frequency-wrong',
      23_523,
      'parts',
    ],
    [
      'T-2609',
      [32.4, 32.2, 32.5, 32.3],
      ['frequency-wrong@RF', 'stored-id-unheard@RF'],
      'frequency-wrong',
      19_384,
      'desk',
    ],
    [
      'T-2613',
      [34.3, 34.1, 34.2, 34.4],
      ['malfunction-unexplained@', 'interference-suspected@'],
      'malfunction-unexplained',
      5_200,
      'waiting-until',
    ],
    [
      'T-2616',
      [41.6, 41.4, 35.8, 35.9],
      [`axle-pressures-exchanged@${all}`, `rotated-without-relearn@${all}`],
      null,
      9_555,
      'bay',
    ],
  ] as const

  it.each(expected)(
    '%s holds its readings, findings, price and whose move',
    (number, read, found, primary, cents, mover) => {
      expect(gauges(number)).toEqual(read)
      expect(new Set(findings(number))).toEqual(new Set(found))
      expect(state(number).diagnosis?.diagnosis.primary).toBe(primary)
      expect(priced(number)).toBe(cents)
      expect(nextMoves(state(number), shop.calendar.now)[0]?.mover).toBe(mover)
    },
  )

  it('end T-2617 without work: we silence no working system', () => {
    expect(gauges('T-2617')).toEqual([32.6, 32.4, 32.7, 32.5])
    expect(state('T-2617').diagnosis?.diagnosis.primary).toBeNull()
    expect(state('T-2617').estimates).toEqual([])
    expect(order('T-2617').entries.at(-1)).toMatchObject({
      kind: 'order.refused',
      payload: { reason: 'would-disable-safety-system' },
    })
    expect(nextMoves(state('T-2617'), shop.calendar.now)).toMatchObject([{ mover: 'nobody' }])
  })

  it('find nothing on T-2620 but tires of six years, sell nothing and may seal it', () => {
    expect(gauges('T-2620')).toEqual([32.3, 32.1, 32.4, 32.2])
    expect(new Set(findings('T-2620'))).toEqual(new Set([`tire-old@${all}+SP`, 'nothing-found-today@']))
    expect(dueCents(state('T-2620'), order('T-2620').money)).toBe(0)
    expect(sealGate(state('T-2620'))).toEqual([])
  })

  it('let T-2603 take two sensors, defer the set of four for 567.00 with the look, and have its left front wheel off', () => {
    const { answers, estimates, work, closed } = state('T-2603')
    expect(dueCents(state('T-2603'), order('T-2603').money)).toBe(32_490)
    const bundles = estimates
      .at(-1)
      ?.scope.bundles.map((bundle) => [
        answers[bundle.bundleKey]?.answer,
        bundleTotals(order('T-2603').money, bundle)?.totalCents,
      ])
    expect(bundles).toEqual([
      ['authorized', 27_290],
      ['deferred', 51_500],
      [undefined, 5_200],
    ])
    expect(nextMoves(state('T-2603'), shop.calendar.now)[0]).toMatchObject({ code: 'wheel-off', wheel: 'LF' })
    expect(work.LF?.fitted?.torque).toEqual({ value: 48, unit: 'lbf·in' })
    expect(closed['LF.sensor.fit']).toBeDefined()
  })

  it('leave T-2605 to prove itself on the road, released with a second person', () => {
    expect(proofOf(state('T-2605')).verdict).toBe('not-yet-proven')
    expect(sealGate(state('T-2605'))).toEqual([])
    const { end } = order('T-2605')
    const greta = shop.staff.find(({ name }) => name === 'Greta Lund-Sorrel')
    expect(end?.handBack.draft.payload).toMatchObject({
      releaseAgreedBy: { staffId: greta?.id, proof: { how: 'pin' } },
    })
    expect(end?.sealedBy).not.toBe(greta?.id)
  })

  it('let T-2614 leave unsafe only after the customer was told and the refusal was witnessed', () => {
    expect(findings('T-2614')).toEqual(['tire-unsafe@LF'])
    expect(state('T-2614').diagnosis?.diagnosis.findings[0]?.stop).toBe('do-not-drive')
    expect(state('T-2614').stopsTold['tire-unsafe']).toBeDefined()
    const devin = shop.staff.find(({ name }) => name === 'Devin Marrow')
    expect(state('T-2614').refusals['tire-unsafe']?.proof).toMatchObject({
      kind: 'refused-to-sign',
      witness: { staffId: devin?.id, proof: { how: 'pin' } },
    })
    expect(state('T-2614').answers['tire.LF']?.answer).toBe('declined')
    expect(dueCents(state('T-2614'), order('T-2614').money)).toBe(5_200)
    expect(owedCents(state('T-2614'), order('T-2614').money)).toBe(0)
    expect(sealGate(state('T-2614'))).toEqual([])
    // Nothing is said to wait for an answer that was given.
    expect(roadGate(state('T-2614'))).toEqual([
      { code: 'wheel-parked', wheel: 'LF', values: { what: 'bulge', waitsFor: 'refused' } },
      { code: 'stop-open', wheel: null, values: { finding: 'tire-unsafe', keeps: 'refused' } },
    ])
  })

  it('set the spare of T-2604 to 69.6 psi in a tire of 55 °F', () => {
    const surroundings = {
      outdoor: { value: 27, unit: 'F' as const },
      overnightLow: null,
      tires: 'indoor-warmed' as const,
      tire: { value: 55, unit: 'F' as const },
      altitudeFeet: 820,
    }
    expect(pressureTargetFor(state('T-2604'), 'SP', surroundings)).toMatchObject({ psi: 69.6 })
  })

  it('promise the part of T-2607 for Wednesday and wait with T-2613 until the 19th', () => {
    expect(state('T-2607').promised?.promisedAt).toBe('2026-01-14T15:00:00.000Z')
    expect(state('T-2613').wait?.until).toBe('2026-01-19T14:00:00.000Z')
  })

  it('set T-2616 to 39.2 psi in front and 45.6 behind, in tires of 58 °F', () => {
    const set = roadPositions.map((wheel) => state('T-2616').work[wheel]?.pressure?.target.psi)
    expect(set).toEqual([39.2, 39.2, 45.6, 45.6])
    expect(state('T-2616').relearn?.method).toBe('connector')
  })
})

describe('the figures of the demo', () => {
  it('let every sound sensor read under its gauge what the altitude makes', () => {
    expect(14.696 - local).toBeCloseTo(0.4, 1)
    const wrong: Readonly<Record<string, number>> = { 'T-2606 LR': 6.2, 'T-2619 RR': 25 }
    for (const { number } of everyOrder)
      for (const check of [state(number).arrival, state(number).closing])
        for (const wheel of roadPositions) {
          const gauge = check.wheels[wheel]?.gauge?.pressure.value
          const reading = check.wheels[wheel]?.sensor?.reading
          if (gauge === undefined || reading?.answer !== 'answered') continue
          const under = gauge - (reading.pressure?.value ?? Number.NaN)
          expect(under).toBeCloseTo(wrong[`${number} ${wheel}`] ?? 0.4, 6)
        }
  })

  it('follow from the temperatures at which the tires were last set', () => {
    // Gay-Lussac: what 33 psi at 68 °F, and 35 psi at 50 °F, become by cold only.
    expect(shifted(33, 68, 19)).toBeCloseTo(28.6, 1)
    const mean = gauges('T-2602').reduce<number>((sum, gauge) => sum + (gauge ?? 0), 0) / 4
    expect(Math.abs(mean - shifted(35, 50, 27))).toBeLessThan(0.1)
  })

  it('bring a tire set warm back to its label in the cold', () => {
    const target = state('T-2601').work.LF?.pressure?.target.psi ?? 0
    expect(shifted(target, 48, 19)).toBeCloseTo(33, 1)
    expect(shifted(target, 48, 11)).toBeCloseTo(32.2, 1)
  })
})

const minutesBetween = (from: string | null | undefined, to: string) =>
  (Date.parse(to) - Date.parse(from ?? '')) / 60_000
