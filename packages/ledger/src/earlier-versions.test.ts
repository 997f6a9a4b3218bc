import { blankSheet } from '@bayledger/reckoning/sheet'
import { describe, expect, it } from 'vitest'
import { oneSensorJob, tireOf } from '../test-support/one-sensor-job.ts'
import { parseDraft } from './draft.ts'
import type { Entry } from './entry.ts'
import { versionOf } from './registry.ts'
import { upcast } from './upcast.ts'

/** An entry of a whole job as a draft, said to be of an earlier version and changed. */
const asVersion = (kind: Entry['kind'], version: number, change: (payload: never) => unknown) => {
  const entry = oneSensorJob('handed-back')
    .entries()
    .find((one) => one.kind === kind)
  if (!entry) throw new RangeError(`the job has no ${kind}`)
  const { id, orderId, payload, writtenAt, restsOn, shopId, writtenBy, deviceId } = entry
  return parseDraft(
    { id, orderId, kind, version, payload: change(structuredClone(payload) as never), writtenAt, restsOn },
    { shopId, writtenBy, deviceId },
  )
}
const wears = { is: 'charged', why: 'wear-part' }
const same = (payload: never) => payload

describe('what an earlier version of an entry did not know', () => {
  it('is refused under the number of that version', () => {
    const findings = asVersion(
      'diagnosis.issued',
      2,
      (payload: { diagnosis: { findings: { code: string }[] } }) => {
        for (const finding of payload.diagnosis.findings) finding.code = 'puncture-found'
        return payload
      },
    )
    expect(findings.ok).toBe(false)
    const evidence = asVersion('diagnosis.issued', 2, (payload: { evidence: { vehicle: object } }) => {
      Object.assign(payload.evidence.vehicle, { casing: { front: 'steel' } })
      return payload
    })
    expect(evidence).toMatchObject({ faults: [{ field: 'payload.evidence.vehicle.casing' }] })
    const sheet = asVersion('sheet.chosen', 2, (payload: { sheet: { tire: { front: object } } }) => {
      Object.assign(payload.sheet.tire.front, { loadClass: 'HL' })
      return payload
    })
    expect(sheet.ok).toBe(false)
    const blank = asVersion('sheet.chosen', 3, ({ sheet: written }: { sheet: object }) => ({
      sheet: { ...written, ...blankSheet('A kind') },
    }))
    expect(blank.ok).toBe(false)
    const plan = asVersion(
      'plan.issued',
      4,
      (payload: { plan: { steps: { code: string; values: object }[] } }) => {
        for (const step of payload.plan.steps)
          if (step.code === 'torque-studs') step.values = { fastener: 'missing' }
        return payload
      },
    )
    expect(plan.ok).toBe(false)
    const cover = asVersion('estimate.issued', 5, (payload: { scope: { bundles: object[] } }) => {
      for (const bundle of payload.scope.bundles)
        Object.assign(bundle, {
          covers: [{ lineKey: 'sensor', judged: { ...wears, until: null, untilMiles: null }, decided: null }],
        })
      return payload
    })
    expect(cover).toMatchObject({ faults: [{ field: 'payload.scope.bundles' }] })
    const tire = asVersion('tire.inspected', 2, () =>
      tireOf('LF', { sizeSeen: { readable: true, text: '215/60R16 95H' } }),
    )
    expect(tire).toMatchObject({ faults: [{ field: 'payload.sizeSeen' }] })
    const hole = { place: 'crown' as const, millimeters: 5, degrees: 0, overlapsRepair: false }
    const two = asVersion('tire.inspected', 3, () =>
      tireOf('LF', {
        tireDamage: ['puncture'],
        punctures: [hole, { ...hole, fromOthers: { millimeters: 90, unitsOverlap: false } }],
      }),
    )
    expect(two).toMatchObject({ faults: [{ field: 'payload.punctures.1.fromOthers' }] })
    const worn = asVersion('tire.inspected', 4, () => tireOf('LF', { wearSeen: 'cups' }))
    expect(worn).toMatchObject({ faults: [{ field: 'payload.wearSeen' }] })
  })

  it('has a version of its own, which a reader that does not know it puts off', () => {
    for (const [kind, version] of [
      ['diagnosis.issued', 3],
      ['sheet.chosen', 5],
      ['estimate.issued', 6],
      ['tire.inspected', 5],
      ['plan.issued', 5],
    ] as const) {
      expect(versionOf(kind)).toBe(version)
      expect(asVersion(kind, version, same).ok, kind).toBe(true)
      expect(asVersion(kind, version + 1, same), kind).toMatchObject({ ok: false, newer: true })
    }
  })

  it('sold the repair of a leak with the search for it', () => {
    const withLeak = (payload: { scope: { bundles: { title: string; works: object[] }[] } }) => {
      const [bundle] = payload.scope.bundles
      Object.assign(bundle ?? {}, { title: 'leak', works: [{ kind: 'find-leak', wheel: 'RR' }] })
      return payload
    }
    const sold = asVersion('estimate.issued', 3, withLeak)
    if (!sold.ok) throw new RangeError('an estimate of version 3 is still read')
    expect(upcast(sold.draft).payload).toMatchObject({
      scope: {
        bundles: expect.arrayContaining([
          expect.objectContaining({
            title: 'leak',
            works: [
              { kind: 'find-leak', wheel: 'RR' },
              { kind: 'repair-puncture', wheel: 'RR' },
            ],
          }),
        ]),
      },
    })
    const newer = (payload: { scope: { bundles: { title: string }[] } }) => {
      Object.assign(payload.scope.bundles[0] ?? {}, { title: 'puncture' })
      return payload
    }
    expect(asVersion('estimate.issued', 3, newer).ok).toBe(false)
  })
})
