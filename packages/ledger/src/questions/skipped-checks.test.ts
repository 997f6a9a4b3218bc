import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { describe, expect, it } from 'vitest'
import { arrivalOf, oneSensorJob } from '../../test-support/one-sensor-job.ts'
import type { OrderPen } from '../../test-support/order-pen.ts'
import { advisor, technician } from '../../test-support/shop.ts'
import { evidenceOf } from './evidence-of.ts'

const bay = { by: technician }
const diagnosisOf = (pen: OrderPen) => diagnose(evidenceOf(pen.state(), null))
const skip = (pen: OrderPen, field: string, why = 'the customer does not know', by = technician) =>
  pen.write('check.skipped', { field, why }, { by })

describe('a check that the findings call for', () => {
  it('is skipped with a reason, each in turn, until none is asked for; the findings stay as they were', () => {
    const pen = oneSensorJob('checked')
    const before = diagnosisOf(pen)
    const skipped: string[] = []
    for (let next = before.nextChecks[0]; next; next = diagnosisOf(pen).nextChecks[0]) {
      expect(skipped).not.toContain(next.field)
      skipped.push(next.field)
      skip(pen, next.field)
    }
    expect(skipped.length).toBeGreaterThan(5)
    const after = diagnosisOf(pen)
    expect(after.findings.map(({ code }) => code)).toEqual(before.findings.map(({ code }) => code))
    expect(evidenceOf(pen.state(), null).notPossible).toEqual(
      skipped.map((field) => ({ field, why: 'the customer does not know' })),
    )
  })

  it('that was skipped outdates findings that were confirmed without it, and its newest reason counts', () => {
    const pen = oneSensorJob('confirmed')
    skip(pen, 'events.collision', 'nobody asked', advisor)
    skip(pen, 'events.collision')
    expect(pen.state().diagnosis?.outdated).toBe(true)
    expect(evidenceOf(pen.state(), null).notPossible).toEqual([
      { field: 'events.collision', why: 'the customer does not know' },
    ])
  })

  it('that is made after all needs no reason any more', () => {
    const pen = oneSensorJob('written-up')
    skip(pen, 'wheels.LF.gauge', 'the cap is stuck')
    expect(evidenceOf(pen.state(), null).notPossible).toHaveLength(1)
    pen.write('wheel.checked', arrivalOf('LF'), bay)
    expect(evidenceOf(pen.state(), null).notPossible).toEqual([])
  })

  it('is called for again when its reason is withdrawn', () => {
    const pen = oneSensorJob('checked')
    const [first] = diagnosisOf(pen).nextChecks
    const { id } = skip(pen, first?.field ?? '')
    expect(diagnosisOf(pen).nextChecks[0]?.field).not.toBe(first?.field)
    expect(pen.strike(id, technician)).toMatchObject({ admitted: true })
    expect(diagnosisOf(pen).nextChecks[0]?.field).toBe(first?.field)
  })
})
