import { describe, expect, it } from 'vitest'
import { decide, oneSensorJob, stageWriters, tireOf } from '../../test-support/one-sensor-job.ts'
import { answerRest, offer } from '../../test-support/parked.ts'
import { bay } from '../../test-support/refusals/setting.ts'
import type { OrderState } from '../state.ts'
import { nextSteps } from './next-steps.ts'

const today = '2026-01-12'

const codesOf = (state: OrderState): readonly string[] => nextSteps(state, today).map(({ code }) => code)

describe('what is next for the customer', () => {
  it('is a call first where nobody has judged the vehicle', () => {
    expect(codesOf(oneSensorJob('written-up').state())[0]).toBe('call-before-moving')
  })

  it('is the re-torque by the sheet’s distance from the odometer at hand-back', () => {
    expect(nextSteps(oneSensorJob('handed-back').state(), today)[0]).toEqual({
      code: 'retorque',
      miles: { from: 50, to: 100 },
      at: { from: { value: 88_206, unit: 'mi' }, to: { value: 88_256, unit: 'mi' } },
    })
  })

  it('is a check of the pressures each month where all is proven, and each week where it is not', () => {
    const state = oneSensorJob('handed-back').state()
    expect(nextSteps(state, today)).toContainEqual({
      code: 'check-pressures',
      every: 'month',
      why: null,
      firstBy: '2026-02-11',
    })
    const short = { ...state, drives: state.drives.map((drive) => ({ ...drive, minutes: 13 })) }
    expect(nextSteps(short, today)).toContainEqual({
      code: 'check-pressures',
      every: 'week',
      why: 'not-proven',
      firstBy: '2026-01-19',
    })
    expect(codesOf(short)).toContain('report-the-light')
    expect(codesOf(state)).not.toContain('report-the-light')
  })

  it('is a check before every trip while nothing is done about a leak, before the customer’s answer too', () => {
    const pen = oneSensorJob('checked')
    pen.write('tire.inspected', tireOf('LF', { tireDamage: ['puncture'] }), bay)
    offer(pen)
    stageWriters.shown(pen)
    const often = () =>
      nextSteps(pen.state(), today).flatMap((step) => (step.code === 'check-pressures' ? [step.every] : []))
    expect(often()).toEqual(['trip'])
    answerRest(pen, 'declined')
    expect(often()).toEqual(['trip'])
  })

  it('says that a light stays on of which the cause was left, and not what to do when it comes back', () => {
    const pen = oneSensorJob('shown')
    decide(pen, 'declined')
    expect(codesOf(pen.state())).toContain('light-stays-on')
    expect(codesOf(pen.state())).not.toContain('if-light-returns')
    expect(codesOf(oneSensorJob('handed-back').state())).toContain('if-light-returns')
  })

  it('gives the figure that a warm tire was set to, with the label’s and the one to expect cold', () => {
    const state = oneSensorJob('handed-back').state()
    const highest = Math.max(
      ...Object.values(state.work).flatMap(({ pressure }) =>
        pressure && pressure.wheel !== 'SP' ? [pressure.target.psi - pressure.target.placardPsi] : [],
      ),
    )
    expect(highest).toBeGreaterThan(0.5)
    const warm = nextSteps(state, today).find(({ code }) => code === 'warm-tires')
    if (warm?.code !== 'warm-tires') throw new Error('nothing is said of warm tires')
    expect(warm.psi - warm.labelPsi).toBe(highest)
    expect(warm.coldPsi).toBeCloseTo(warm.labelPsi, 1)
  })

  it('gives the first of the days to which work was put off, and no re-torque where no wheel came off', () => {
    const pen = oneSensorJob('shown')
    decide(pen, 'deferred')
    const state = pen.state()
    const answer = Object.values(state.answers)[0]
    if (!answer) throw new Error('the order has an answer')
    const later = {
      ...state,
      answers: {
        one: { ...answer, deferredUntil: '2026-03-02' },
        other: { ...answer, deferredUntil: '2026-02-01' },
      },
    }
    expect(nextSteps(later, today).at(-1)).toEqual({ code: 'deferred-work', day: '2026-02-01' })
    expect(codesOf(later)).not.toContain('retorque')
  })
})
