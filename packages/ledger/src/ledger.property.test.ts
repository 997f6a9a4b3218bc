import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectInvariants, expectWholeLedger } from '../test-support/invariants.ts'
import { arrivalOf, oneSensorJob, stages } from '../test-support/one-sensor-job.ts'
import { orderPen } from '../test-support/order-pen.ts'
import { commands, tryCommand } from '../test-support/random-order.ts'
import { wordsOf } from '../test-support/seeded-ids.ts'
import { colleague, factsAt, gauge, otherTablet, shopId, tablet, technician } from '../test-support/shop.ts'
import type { Draft, Entry } from './entry.ts'
import { layOnTop } from './fold/foldable.ts'
import { fold } from './fold.ts'
import { verifyChain } from './hash-chain.ts'
import { type LedgerPen, ledgerPen } from './ledger-pen.ts'
import { nextMoves } from './questions/moves.ts'

const seed = 20_260_112

describe('whatever people try', () => {
  const job = oneSensorJob('handed-back', 'tried').entries()

  it('no admitted entry breaks what the record must guarantee', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: job.length }), commands, (begun, tries) => {
        const pen = orderPen('tried', job.slice(0, begun))
        for (const command of tries) {
          const count = pen.entries().length
          tryCommand(pen, command)
          for (let end = count + 1; end <= pen.entries().length; end += 1)
            expectInvariants(pen.entries().slice(0, end))
        }
        expectWholeLedger(pen.entries())
        expect(nextMoves(pen.state(), pen.now()).length).toBeGreaterThan(0)
      }),
      { seed, numRuns: 80 },
    )
  }, 120_000)
})

describe('a ledger that is delivered again and again', () => {
  it('folds the same when it is read twice', () => {
    for (const stage of stages) expectWholeLedger(oneSensorJob(stage).entries())
  })

  /** A device's own readings, each resting on the one before, as an outbox holds them. */
  const outboxOf = (
    deviceId: string,
    readings: readonly { wheel: 'LF' | 'RF' | 'RR' | 'LR'; psi: number }[],
  ): Draft[] => {
    const pen = oneSensorJob('written-up', 'delivered')
    const drafts: Draft[] = []
    for (const { wheel, psi } of readings)
      drafts.push(
        pen.draft(
          'wheel.checked',
          arrivalOf(wheel, { gauge: { pressure: { value: psi, unit: 'psi' }, instrument: gauge } }),
          {
            by: deviceId === tablet ? technician : colleague,
            deviceId,
            restsOn: drafts.slice(-1).map(({ id }) => id),
            id: `${deviceId.slice(0, 24)}${String(drafts.length).padStart(12, '0')}`,
          },
        ),
      )
    return drafts
  }

  /** The order on the server, before anything of the devices came in. */
  const begun = (): LedgerPen => {
    const { orderId, entries } = oneSensorJob('written-up', 'delivered')
    return ledgerPen(shopId, orderId, entries())
  }

  const readings = fc.array(
    fc.record({
      wheel: fc.constantFrom('LF' as const, 'RF' as const, 'RR' as const, 'LR' as const),
      psi: fc.constantFrom(-40, 30, 31, 33),
    }),
    { minLength: 1, maxLength: 5 },
  )

  it('holds each id once or has refused it, and every side folds alike', () => {
    fc.assert(
      fc.property(
        readings,
        readings,
        fc.array(fc.record({ first: fc.boolean(), resend: fc.nat(3) }), { maxLength: 30 }),
        (one, other, schedule) => {
          const outboxes = { first: outboxOf(tablet, one), second: outboxOf(otherTablet, other) }
          const pen = begun()
          const refused = new Set<string>()
          const receive = (draft: Draft): void => {
            if (refused.has(draft.id) || pen.entries().some(({ id }) => id === draft.id)) return
            const facts = factsAt('2026-01-12T17:00:00.000Z', draft.writtenBy, { refusedIds: refused })
            if (!pen.attempt(draft, facts).admitted) refused.add(draft.id)
          }
          const sent = { first: 0, second: 0 }
          const sendNext = (side: 'first' | 'second', resend: number): void => {
            const from = Math.max(0, sent[side] - resend)
            for (const draft of outboxes[side].slice(from, sent[side] + 1)) receive(draft)
            sent[side] = Math.min(sent[side] + 1, outboxes[side].length)
          }
          for (const { first, resend } of schedule) sendNext(first ? 'first' : 'second', resend)
          for (const side of ['first', 'second'] as const)
            while (sent[side] < outboxes[side].length) sendNext(side, 1)

          for (const { id } of [...outboxes.first, ...outboxes.second]) {
            const times = pen.entries().filter((entry) => entry.id === id).length
            expect(times + (refused.has(id) ? 1 : 0)).toBe(1)
          }
          expectWholeLedger(pen.entries())
        },
      ),
      { seed, numRuns: 60 },
    )
  }, 60_000)

  it('shows a device what the server will show, without a network', () => {
    fc.assert(
      fc.property(readings, (some) => {
        const sound = some.filter(({ psi }) => psi > 0)
        const pen = begun()
        const drafts = outboxOf(tablet, sound)
        const onTheTablet = fold(layOnTop(pen.entries(), drafts))
        for (const draft of drafts) pen.attempt(draft, factsAt('2026-01-12T17:00:00.000Z', draft.writtenBy))
        const { headHash: _server, marks: _marks, ...served } = fold(pen.entries())
        const { headHash: _tablet, marks: _unsent, ...shown } = onTheTablet
        expect(withoutReceipt(shown)).toEqual(withoutReceipt(served))
      }),
      { seed, numRuns: 20 },
    )
  }, 60_000)
})

/** The time of receipt is the one thing that only the server knows. */
const withoutReceipt = (state: object): unknown =>
  JSON.parse(JSON.stringify(state, (key, value: unknown) => (key === 'receivedAt' ? undefined : value)))

describe('the chain', () => {
  const entries = oneSensorJob('handed-back').entries()

  it('breaks at the entry in which any one character was changed', () => {
    fc.assert(
      fc.property(
        fc.nat(entries.length - 1),
        fc.nat(4_000),
        fc.constantFrom('0', '7', 'a', 'f'),
        (index, at, letter) => {
          const text = JSON.stringify(entries[index])
          const place = at % text.length
          if (!/[0-9a-f]/.test(text[place] ?? '') || text[place] === letter) return
          const changed = parsed(`${text.slice(0, place)}${letter}${text.slice(place + 1)}`)
          if (changed === null || JSON.stringify(changed) === JSON.stringify(entries[index])) return
          const forged = entries.map((entry, other) => (other === index ? changed : entry))
          expect(verifyChain(forged)).toMatchObject({ whole: false, brokenAtSeq: index + 1 })
        },
      ),
      { seed, numRuns: 300 },
    )
  }, 60_000)

  it('breaks where an entry is left out or two are exchanged', () => {
    expect(verifyChain(entries.filter(({ seq }) => seq !== 9))).toMatchObject({
      whole: false,
      brokenAtSeq: 9,
    })
    const [first, second, ...rest] = entries
    expect(verifyChain([second, first, ...rest] as Entry[])).toMatchObject({ whole: false, brokenAtSeq: 1 })
  })

  it('does not cover words kept beside it: a note names them by digest only', () => {
    expect(JSON.stringify(entries)).toContain(wordsOf('complaint'))
    expect(new Set(entries.map((entry) => entry.shopId))).toEqual(new Set([shopId]))
  })
})

/** JSON that a forger might have broken; not every broken text is still JSON. */
const parsed = (text: string): Entry | null => {
  try {
    return JSON.parse(text) as Entry
  } catch {
    return null
  }
}
