import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'
import { parseDraft } from '../draft.ts'
import type { Entry } from '../entry.ts'
import { fold } from '../fold.ts'
import { verifyChain } from '../hash-chain.ts'
import { handBackGate, openSteps, proofOf, readySteps, wheelStatus } from '../questions/gates.ts'
import { nextMoves } from '../questions/moves.ts'
import { openTroubles } from '../questions/troubles.ts'
import { wearAt } from '../questions/wear-seen.ts'
import { kindNames } from '../registry.ts'
import { DiagnosisIssuedVersion1 } from '../subjects/findings/diagnosis-version-1.ts'

/**
 * Ledgers as they were written by the first version of every kind, by the versions of late 2026, and by kinds added
 * after those. They are never
 * written anew: a shop reads its orders for years, and whatever the code becomes, it reads these the same.
 */
const here = import.meta.dirname
const frozen = (name: string, version: 1 | 2 | 3 | 4 | 5 | 6 | 7 = 1): Entry[] =>
  JSON.parse(readFileSync(`${here}/version-${version}-${name}.json`, 'utf8')) as Entry[]
const all = readdirSync(here)
  .filter((file) => file.endsWith('.json'))
  .map((file) => JSON.parse(readFileSync(`${here}/${file}`, 'utf8')) as Entry[])

describe('the frozen ledgers', () => {
  it('hold every kind of entry there is', () => {
    const held = new Set(all.flat().map(({ kind }) => kind))
    expect(kindNames.filter((kind) => !held.has(kind))).toEqual([])
  })

  it('have whole chains, and the heads that were written down when they were frozen', () => {
    for (const entries of all) expect(verifyChain(entries)).toEqual({ whole: true })
    expect(frozen('whole-job').at(-1)?.hash).toBe(
      '8e48689713e548eebe7ab32fe76aa764b4e7a963844bd122a982d017d17ddc70',
    )
    expect(frozen('whole-job', 2).at(-1)?.hash).toBe(
      '4426b68b75a5b02cee719e2ce284b122c48c553f06504e2543bf14c753adb0cc',
    )
  })

  it('are still read as drafts, entry by entry', () => {
    for (const { id, orderId, kind, version, payload, writtenAt, restsOn, ...rest } of all.flat()) {
      const { shopId, writtenBy, deviceId } = rest
      const parsed = parseDraft(
        { id, orderId, kind, version, payload, writtenAt, restsOn },
        { shopId, writtenBy, deviceId },
      )
      expect(parsed, `${kind} at ${rest.seq}`).toMatchObject({ ok: true })
      if (parsed.ok) expect(parsed.draft.payload).toEqual(payload)
    }
  })

  it('fold to the job as it was', () => {
    const state = fold(frozen('whole-job'))
    expect(state.seq).toBe(78)
    expect(state.opened?.orderNumber).toBe('T-2602')
    expect(state.arrival.wheels.LF?.gauge?.pressure).toEqual({ value: 32.8, unit: 'psi' })
    expect(state.marks.filter(({ struck }) => struck)).toHaveLength(2)
    expect(state.diagnosis).toMatchObject({
      outdated: false,
      diagnosis: { ruleSet: '1', primary: 'sensor-silent' },
    })
    expect(state.refusals['stem-leaking']).toBeDefined()
    expect(state.answers).toMatchObject({
      'sensor.RR': { answer: 'authorized' },
      'stem.LF': { answer: 'deferred', deferredUntil: '2026-03-01' },
    })
    expect(state.work.RR?.overtaken.map(({ moved }) => moved)).toEqual([[], [3]])
    expect(wheelStatus(state, 'RR')).toBe('secured')
    expect(openSteps(state)).toEqual([])
    expect(proofOf(state)).toEqual({ verdict: 'proven', minutes: 22 })
    expect(state.holds).toEqual([])
    expect(handBackGate(state)).toEqual([])
    expect(state.reports.map(({ reportNumber }) => reportNumber)).toEqual(['R-2602-1', 'R-2602-2'])
    expect(nextMoves(state, '2026-01-13T00:00:00.000Z').map(({ code }) => code)).toEqual(['finished'])
  })

  it('fold to a wheel that was parked by a broken stud, and repaired', () => {
    const state = fold(frozen('trouble', 3))
    expect(state.headHash).toBe('defc715cf417d2d75b7322859bc14cbe4336cdcf0da761fbed80ca0c229711fc')
    expect(state.troubles).toMatchObject([{ stepKey: 'RR.wheel.off', wheel: 'RR', what: 'stud' }])
    expect(state.answers['fastener.RR']?.answer).toBe('authorized')
    expect(openTroubles(state)).toEqual([])
    expect(wheelStatus(state, 'RR')).toBe('off')
  })

  it('fold to a tire whose sidewall was read, and a drive whose start and settled minutes are on record', () => {
    const state = fold(frozen('left', 4))
    expect(state.headHash).toBe('13e9a826e0a0cf796a797a3dcfcce6673056e7b44bbcd3708c61bdb9dc409b0f')
    expect(state.onTheRoad).toBeNull()
    expect(state.drives).toMatchObject([{ minutes: 22, left: { entryId: expect.any(String) } }])
    expect(state.settledHolds).toMatchObject([{ hold: { values: { typed: 22, clock: 3 } } }])
    expect(state.arrival.tires.LF).toMatchObject({
      sizeSeen: { readable: true, text: '235/55R18 100H' },
      dateCodeSeen: { readable: false, why: 'worn-off' },
      casing: 'polyester',
    })
  })

  it('fold to photos, one of what is not right, which the customer is shown', () => {
    const state = fold(frozen('photos', 5))
    expect(state.headHash).toBe('82e19f368eea82f0d3c50f8333a140cff2a99eecdc412e7859149f9a383516c3')
    expect(state.photos).toMatchObject([
      { wheel: 'LF', subject: 'not-right', shared: true, picture: { width: 1_600, height: 1_200 } },
      { wheel: null, subject: 'placard', shared: false },
    ])
    expect(fold(frozen('whole-job')).photos).toMatchObject([
      { subject: 'stem', picture: null, shared: false },
    ])
  })

  it('fold to a tread that was read from one shoulder to the other', () => {
    const state = fold(frozen('wear', 6))
    expect(state.headHash).toBe('27a9f2c33eca8f392831813457b61d66fffd7cacf1b92e3fe244ec054be6b5a1')
    expect(state.arrival.tires.LF).toMatchObject({
      treadAcross: { inner: 4, middle: 7, outer: 7 },
      wearSeen: 'feathers',
    })
    expect(wearAt(state, 'LF')).toEqual({
      across: { read: { inner: 4, middle: 7, outer: 7 }, hint: 'inner-shoulder' },
      around: 'feathers',
    })
    expect(wearAt(state, 'RF')).toEqual({ across: null, around: null })
  })

  it('fold to a comeback with its cause, and an estimate that says of its lines what the warranty covers', () => {
    const state = fold(frozen('comeback', 7))
    expect(state.headHash).toBe('33f3860c28f3379d6d4fb05e4e293f8e8a222ca2daa12dc4c7e846ba6e560371')
    expect(state.comeback).toMatchObject({ cause: 'part-failed', words: null })
    const covers = state.estimates[0]?.scope.bundles.flatMap((bundle) => bundle.covers ?? []) ?? []
    expect(covers.map(({ lineKey, decided }) => [lineKey, decided])).toEqual([
      ['sensor', null],
      ['wheel-service', null],
      ['relearn', null],
      ['sensor-disposal', 'charged'],
      ['look', null],
    ])
  })

  it('keep the words that version 1 said of a diagnosis, beside the same facts', () => {
    const entries = frozen('whole-job')
    const payload = entries.findLast(({ kind }) => kind === 'diagnosis.issued')?.payload
    const issued = z.parse(DiagnosisIssuedVersion1, payload)
    const findings = fold(entries).diagnosis?.diagnosis.findings ?? []
    expect(findings).toHaveLength(issued.diagnosis.findings.length)
    issued.diagnosis.findings.forEach(({ next, customer, because, ...facts }, at) => {
      expect(findings[at]).toMatchObject({
        ...facts,
        asWritten: { next, customer },
        because: because.map(({ says, ...fact }) => ({
          ...fact,
          code: 'as-written',
          values: { words: says },
        })),
      })
    })
  })

  it('fold to the job as it was, in the second versions', () => {
    const state = fold(frozen('whole-job', 2))
    expect(state.seq).toBe(69)
    expect(state.opened?.orderNumber).toBe('T-2602')
    expect(state.diagnosis).toMatchObject({
      outdated: false,
      diagnosis: { ruleSet: '3', primary: 'sensor-silent' },
    })
    expect(state.marks.filter(({ struck }) => struck)).toHaveLength(2)
    expect(wheelStatus(state, 'RR')).toBe('secured')
    expect(openSteps(state)).toEqual([])
    expect(state.holds).toEqual([])
    expect(handBackGate(state)).toEqual([])
    expect(state.reports.map(({ reportNumber }) => reportNumber)).toEqual(['R-2602-1'])
    expect(nextMoves(state, '2026-01-13T00:00:00.000Z').map(({ code }) => code)).toEqual(['finished'])
    expect(fold(frozen('stop', 2)).refusals).not.toEqual({})
    expect(Object.keys(fold(frozen('set-aside', 2)).setAside)).toHaveLength(1)
  })

  it('fold to the plan by lift, at the look inside a tire that was purged of a sealant’s gas', () => {
    const state = fold(frozen('sealant', 3))
    expect(readySteps(state).map(({ stepKey }) => stepKey)).toEqual(['RR.tire.inside'])
    expect(state.closed['RR.tire.purge']).toMatchObject({ kind: 'sealant.purged' })
    expect(state.plan?.plan.steps.map(({ height }) => height).join(' ')).toMatch(
      /^(floor )*(lifted )*(touching )*(floor ?)*$/,
    )
  })

  it('fold to findings without a check that was skipped with a reason', () => {
    const state = fold(frozen('skipped-check', 3))
    expect(state.headHash).toBe('3675d7ad6aa4a03b39857fc49866880cafd541e3e2cd7ffe4f9d0cd306cb801c')
    expect(state.skippedChecks).toMatchObject([
      { field: 'events.driven-low', why: 'the customer does not know' },
    ])
  })

  it('fold to the orders that ended in words', () => {
    expect(fold(frozen('refused')).ended).toMatchObject({
      how: 'refused',
      reason: 'would-disable-safety-system',
    })
    expect(fold(frozen('withdrawn')).ended).toMatchObject({ how: 'withdrawn', reason: 'opened-twice' })
  })
})
