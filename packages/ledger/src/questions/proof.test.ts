import { describe, expect, it } from 'vitest'
import { decide, oneSensorJob, workUntil } from '../../test-support/one-sensor-job.ts'
import { before, closeStep, stepsOf } from '../../test-support/refusals/setting.ts'
import { wordsOf } from '../../test-support/seeded-ids.ts'
import { technician } from '../../test-support/shop.ts'
import { proofOf } from './gates.ts'

const bay = { by: technician }

describe('the proof', () => {
  it('adds up drives and starts again after the light came on', () => {
    const pen = before('vehicle.proof.drive')
    closeStep<'drive.done'>(pen, 'vehicle.proof.drive', { minutes: 13 })
    expect(proofOf(pen.state())).toMatchObject({ verdict: 'not-yet-proven' })
    closeStep<'drive.done'>(pen, 'vehicle.proof.drive', { minutes: 12, lightAtEnd: 'solid' })
    expect(proofOf(pen.state())).toMatchObject({ verdict: 'not-fixed' })
    closeStep<'drive.done'>(pen, 'vehicle.proof.drive', { minutes: 15 })
    expect(proofOf(pen.state())).toMatchObject({ verdict: 'not-yet-proven' })
    closeStep<'drive.done'>(pen, 'vehicle.proof.drive', { minutes: 5 })
    expect(proofOf(pen.state())).toEqual({ verdict: 'proven', minutes: 20 })
  })

  it('takes the minutes of the sheet where the vehicle learns on the same drive and needs longer', () => {
    const pen = before('vehicle.proof.drive')
    const steps = stepsOf(pen).map((step) =>
      step.stepKey === 'vehicle.proof.drive'
        ? {
            ...step,
            figure: {
              kind: 'minutes' as const,
              minutes: 30,
              of: 'proof-drive' as const,
              source: { from: 'sheet' as const, reference: 'the sheet' },
            },
          }
        : step,
    )
    pen.write('plan.issued', { plan: { planVersion: 3, steps }, decisionId: null }, { by: 'system' })
    closeStep<'drive.done'>(pen, 'vehicle.proof.drive', { minutes: 22 })
    expect(pen.state().closed['vehicle.proof.drive']).toBeUndefined()
    expect(proofOf(pen.state())).toEqual({
      verdict: 'not-yet-proven',
      why: 'not-driven-enough',
      minutes: 22,
      needed: 30,
    })
    closeStep<'drive.done'>(pen, 'vehicle.proof.drive', { minutes: 8 })
    expect(pen.state().closed['vehicle.proof.drive']).toBeDefined()
    expect(proofOf(pen.state())).toEqual({ verdict: 'proven', minutes: 30 })
  })

  it('fails where the vehicle stored another ID than the wheel sends', () => {
    const pen = before('vehicle.closing.module')
    closeStep<'module.read'>(pen, 'vehicle.closing.module', { ids: { LF: '0A1B2C13', LR: '0A1B2C10' } })
    workUntil(pen, () => false)
    expect(proofOf(pen.state())).toMatchObject({ verdict: 'not-fixed' })
  })

  it('holds where the vehicle writes the same IDs in decimal digits, and fails where one of them differs', () => {
    const stored = { LF: '0169552912', RF: '169552913', RR: '169553143', LR: '169552915' }
    const verdictWith = (ids: Partial<typeof stored>) => {
      const pen = before('vehicle.closing.module')
      closeStep<'module.read'>(pen, 'vehicle.closing.module', {
        notation: 'decimal',
        ids: { ...stored, ...ids },
      })
      workUntil(pen, () => false)
      return proofOf(pen.state()).verdict
    }
    expect(verdictWith({})).toBe('proven')
    expect(verdictWith({ LR: '169552916' })).toBe('not-fixed')
  })

  it('fails where a sensor stays silent at the closing check', () => {
    const pen = before('RR.closing.read')
    closeStep<'wheel.checked'>(pen, 'RR.closing.read', { sensor: { answer: 'silent', tries: 3 } })
    workUntil(pen, () => false)
    expect(proofOf(pen.state())).toMatchObject({ verdict: 'not-fixed' })
  })

  it('is never claimed where the relearn was set aside', () => {
    const pen = before('vehicle.relearn.done')
    pen.write('step.set_aside', { stepKey: 'vehicle.relearn.done', reason: wordsOf('why') }, bay)
    workUntil(pen, () => false)
    expect(proofOf(pen.state())).toMatchObject({ verdict: 'not-yet-proven' })
  })

  it('has nothing to prove where nothing was authorized', () => {
    const pen = oneSensorJob('shown')
    decide(pen, 'declined')
    expect(proofOf(pen.state())).toEqual({ verdict: 'nothing-to-prove' })
  })
})
