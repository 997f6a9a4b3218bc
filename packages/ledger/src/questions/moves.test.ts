import { describe, expect, it } from 'vitest'
import { seal } from '../../test-support/money.ts'
import {
  answersOf,
  arrivalOf,
  decisionOf,
  findingsOf,
  oneSensorJob,
  opening,
  stageWriters,
  tireOf,
  workUntil,
} from '../../test-support/one-sensor-job.ts'
import { type OrderPen, orderPen } from '../../test-support/order-pen.ts'
import { before, changedEstimate, closeStep, dearer, lastOf } from '../../test-support/refusals/setting.ts'
import { wordsOf } from '../../test-support/seeded-ids.ts'
import { advisor, colleague, gauge, otherTablet, technician } from '../../test-support/shop.ts'
import { nextMoves } from './moves.ts'

const bay = { by: technician }
const desk = { by: advisor, deviceId: null }

const moves = (pen: OrderPen, now = '2026-01-12T18:00:00.000Z'): string[] =>
  nextMoves(pen.state(), now).map(({ mover, code }) => `${mover}: ${code}`)

const leaking = (): OrderPen => {
  const pen = oneSensorJob('checked')
  pen.write('tire.inspected', tireOf('LF', { stem: 'leaks' }), bay)
  stageWriters.confirmed(pen)
  return pen
}

describe('whose move it is, from the first row on', () => {
  it('0: a wheel off, untorqued or unchecked is shown before any other move', () => {
    expect(moves(before('RR.tire.open'))).toEqual(['bay: wheel-off', 'bay: step-open'])
    expect(moves(before('RR.studs.torque-half'))).toEqual(['bay: wheel-untorqued', 'bay: step-open'])
    expect(moves(before('RR.studs.second-check'))).toEqual(['torque-check: torque-check', 'bay: step-open'])
  })

  it('0: a wheel that is off is shown beside a customer who still decides', () => {
    const pen = before('RR.tire.open')
    pen.write('estimate.issued', changedEstimate(pen, dearer), desk)
    pen.write('estimate.shown', { revision: 2, channel: 'telephone', linkId: null }, desk)
    expect(moves(pen)).toEqual(['bay: wheel-off', 'customer: estimate-unanswered', 'bay: step-open'])
  })

  it('1: a stop that the customer was not told about', () => {
    const pen = leaking()
    expect(moves(pen)).toEqual(['desk: stop-untold'])
    const told = {
      diagnosisId: lastOf(pen, 'diagnosis.issued'),
      codes: ['stem-leaking'],
      channel: 'telephone' as const,
      answer: wordsOf('yes'),
    }
    pen.write('stop.told', told, desk)
    expect(moves(pen)).toEqual(['desk: estimate-missing'])
  })

  it('1: a stop that the customer was told about for one wheel only, and now concerns another', () => {
    const pen = leaking()
    pen.write(
      'stop.told',
      {
        diagnosisId: lastOf(pen, 'diagnosis.issued'),
        codes: ['stem-leaking'],
        channel: 'telephone',
        answer: wordsOf('yes'),
      },
      desk,
    )
    pen.write('tire.inspected', tireOf('RF', { stem: 'leaks' }), bay)
    pen.write('diagnosis.issued', findingsOf(pen), bay)
    expect(moves(pen)).toEqual(['desk: stop-untold'])
  })

  it('2: a sensor broken in our hands, until another is fitted after it', () => {
    const pen = before('RR.sensor.fit')
    pen.write('sensor.broken', { wheel: 'RR', how: 'dropped' }, bay)
    expect(moves(pen)).toEqual(['bay: wheel-off', 'manager: sensor-broken'])
    closeStep(pen, 'RR.sensor.fit')
    expect(moves(pen)).toEqual(['bay: wheel-off', 'bay: step-open'])
    pen.write('sensor.broken', { wheel: 'RR', how: 'the new one too' }, bay)
    expect(moves(pen)).toContain('manager: sensor-broken')
  })

  it('3: a wait that somebody named, until it has run out', () => {
    const pen = oneSensorJob('confirmed')
    pen.write('wait.set', { reason: 'customer-returns', until: '2026-01-12T19:00:00.000Z' }, desk)
    expect(moves(pen)).toEqual(['waiting-until: wait'])
    expect(nextMoves(pen.state(), '2026-01-12T18:00:00.000Z')[0]?.until).toBe('2026-01-12T19:00:00.000Z')
    expect(moves(pen, '2026-01-12T19:00:00.000Z')).toEqual(['desk: estimate-missing'])
  })

  it('4: what the desk has not written down', () => {
    const pen = orderPen()
    pen.write('order.opened', opening, desk)
    expect(moves(pen)).toEqual(['desk: complaint'])
    pen.write('complaint.recorded', { words: wordsOf('words'), reportedLight: null, events: [] }, desk)
    expect(moves(pen)).toEqual(['desk: sheet'])
  })

  it('5: what was not read as received, and what two devices read differently', () => {
    expect(moves(oneSensorJob('written-up'))).toEqual(['bay: arrival-check'])
    const pen = oneSensorJob('checked')
    pen.write(
      'wheel.checked',
      arrivalOf('LF', { gauge: { pressure: { value: 20, unit: 'psi' }, instrument: gauge } }),
      { by: colleague, deviceId: otherTablet },
    )
    expect(moves(pen)).toEqual(['bay: recorded-twice'])
  })

  it('5: findings issued too early do not hide what is still to be read', () => {
    const pen = oneSensorJob('written-up')
    pen.write('diagnosis.issued', findingsOf(pen), bay)
    expect(moves(pen)).toEqual(['bay: arrival-check'])
  })

  it('6: findings not computed, not confirmed, or outdated', () => {
    const pen = oneSensorJob('checked')
    expect(moves(pen)).toEqual(['bay: findings-uncomputed'])
    const { id } = pen.write('diagnosis.issued', findingsOf(pen), bay)
    expect(moves(pen)).toEqual(['bay: findings-unconfirmed'])
    pen.write('diagnosis.confirmed', { diagnosisId: id, verdict: { agrees: true } }, bay)
    pen.write('tire.inspected', tireOf('LF', { treadDepth32nds: 5 }), bay)
    expect(moves(pen)).toEqual(['bay: findings-uncomputed'])
  })

  it('7: no estimate for the findings, but none again where they offer the same', () => {
    expect(moves(oneSensorJob('confirmed'))).toEqual(['desk: estimate-missing'])
    const pen = oneSensorJob('decided')
    pen.write('tire.inspected', tireOf('LF', { treadDepth32nds: 6 }), bay)
    stageWriters.confirmed(pen)
    expect(moves(pen)).toEqual(['bay: step-open'])
  })

  it('8: an estimate that nobody has shown or answered', () => {
    expect(moves(oneSensorJob('estimated'))).toEqual(['desk: estimate-unshown'])
    expect(moves(oneSensorJob('shown'))).toEqual(['customer: estimate-unanswered'])
  })

  it('9: a part that was promised, until it is drawn', () => {
    const pen = oneSensorJob('decided')
    pen.write('part.promised', { partCode: 'TS-315-C', promisedAt: '2026-01-14T15:00:00.000Z' }, desk)
    expect(moves(pen)).toEqual(['parts: part-promised'])
    closeStep(pen, 'RR.sensor.match')
    expect(moves(pen)).toEqual(['bay: step-open'])
  })

  it('10 before 11: a second check, then the steps that are open', () => {
    const pen = before('RR.studs.second-check')
    expect(moves(pen)[0]).toBe('torque-check: torque-check')
    expect(moves(oneSensorJob('decided'))).toEqual(['bay: step-open'])
  })

  it('12: the proof drive, also when it was begun', () => {
    const pen = before('vehicle.proof.drive')
    expect(moves(pen)).toEqual(['out-on-the-road: drive-open'])
    closeStep<'drive.done'>(pen, 'vehicle.proof.drive', { minutes: 13 })
    expect(nextMoves(pen.state(), pen.now())[0]?.values).toEqual({ minutes: 13, needed: 20 })
  })

  it('13: the report, the payment, the keys', () => {
    const pen = oneSensorJob('worked')
    expect(moves(pen)).toEqual(['desk: payment-open'])
    pen.write('payment.noted', { money: seal({ amountCents: 20_340 }), method: 'card', back: null }, desk)
    expect(moves(pen)).toEqual(['desk: report-unsealed'])
    stageWriters.sealed(pen)
    expect(moves(pen)).toEqual(['desk: keys'])
  })

  it('13: the payment again, where the report was sealed without it, and then the keys', () => {
    const pen = oneSensorJob('worked')
    stageWriters.sealed(pen)
    expect(moves(pen)).toEqual(['desk: payment-open'])
    expect(nextMoves(pen.state(), pen.now())[0]?.values).toEqual({ sealed: true })
    pen.write('payment.noted', { money: seal({ amountCents: 0 }), method: 'none-due', back: null }, desk)
    expect(moves(pen)).toEqual(['desk: keys'])
  })

  it('14: nothing, once the keys are back or the order has ended', () => {
    expect(moves(oneSensorJob('handed-back'))).toEqual(['nobody: finished'])
    const pen = oneSensorJob('written-up')
    pen.write('order.withdrawn', { reason: 'customer', words: wordsOf('why') }, desk)
    expect(moves(pen)).toEqual(['nobody: finished'])
  })

  it('13: after a No to everything the inspection is still to be paid, and then the report is sealed', () => {
    const pen = oneSensorJob('shown')
    pen.write('estimate.decided', decisionOf(pen, answersOf(pen, 'declined')), desk)
    workUntil(pen, () => false)
    expect(moves(pen)).toEqual(['desk: payment-open'])
    pen.write('payment.noted', { money: seal({ amountCents: 5_200 }), method: 'cash', back: null }, desk)
    expect(moves(pen)).toEqual(['desk: report-unsealed'])
  })
})
