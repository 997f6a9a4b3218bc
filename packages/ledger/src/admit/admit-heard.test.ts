import { describe, expect, it } from 'vitest'
import {
  answersOf,
  arrivalOf,
  decisionOf,
  findingsOf,
  oneSensorJob,
  sealOf,
  workUntil,
} from '../../test-support/one-sensor-job.ts'
import { type OrderPen, orderPen } from '../../test-support/order-pen.ts'
import { wordsOf } from '../../test-support/seeded-ids.ts'
import {
  advisor,
  colleague,
  factsAt,
  gauge,
  lead,
  otherTablet,
  shopId,
  tablet,
  technician,
  wrench,
  wrenchFacts,
} from '../../test-support/shop.ts'
import { closingOf } from '../../test-support/step-payload.ts'
import type { Draft } from '../entry.ts'
import { fold } from '../fold.ts'
import { ledgerPen, provenBy } from '../ledger-pen.ts'
import { roadGate, sealGate } from '../questions/gates.ts'
import { openHolds } from '../questions/open-holds.ts'
import type { OrderState } from '../state.ts'
import type { AdmitFacts } from './facts.ts'

const stepOf = (state: OrderState, isIt: (stepKey: string) => boolean) => {
  const step = state.plan?.plan.steps.find(({ stepKey }) => isIt(stepKey))
  if (!step) throw new RangeError('the plan has no such step')
  return step
}

/** The next step's record on the other tablet, written at this moment of the order. */
const recordOf = (pen: OrderPen, stepKey: string): Draft => {
  const { kind, payload } = closingOf(
    pen.state(),
    stepOf(pen.state(), (key) => key === stepKey),
  )
  return pen.draft(kind, payload, { by: colleague, deviceId: otherTablet })
}

/** Delivers a draft that was written when its device had read the first `seq` entries. */
const deliverLate = (
  pen: OrderPen,
  draft: Draft,
  heard: { seq: number; waited: boolean },
  facts: Partial<AdmitFacts> = {},
) => {
  const ledger = ledgerPen(shopId, pen.orderId, pen.entries())
  const now = facts.now ?? pen.now()
  const appended = ledger.attempt(
    draft,
    factsAt(now, draft.writtenBy, { secondPersons: provenBy(draft), ...facts }),
    {},
    heard,
  )
  return { appended, ledger, state: ledger.state() }
}

const holdsOf = (state: OrderState) =>
  openHolds(state).map((hold) => ({
    code: hold.code,
    gate: hold.gate,
    values: 'values' in hold ? hold.values : null,
  }))

/** The wheel-off step of the one-sensor job, recorded by both tablets: ours is in the ledger, the other comes late. */
const recordedTwice = () => {
  const pen = oneSensorJob('decided')
  workUntil(pen, (key) => key === 'RR.wheel.off')
  const seq = pen.entries().length
  const late = recordOf(pen, 'RR.wheel.off')
  const first = pen.write(
    'wheel.removed',
    { stepKey: 'RR.wheel.off', wheel: 'RR', remark: null },
    { by: technician },
  )
  return { pen, first, late, ...deliverLate(pen, late, { seq, waited: true }) }
}

describe('a step that two tablets recorded', () => {
  it('keeps both: the first counts, and a person picks before the report is sealed', () => {
    const { appended, state, first } = recordedTwice()
    expect(appended.admitted).toBe(true)
    expect(state.closed['RR.wheel.off']?.written.entryId).toBe(first.id)
    expect(state.work.RR?.removed?.written.entryId).toBe(first.id)
    expect(holdsOf(state)).toEqual([
      { code: 'heard-late', gate: 'seal', values: { refusal: 'STEP_ALREADY_CLOSED' } },
    ])
    expect(sealGate(state).map(({ code }) => code)).toContain('heard-late')
  })

  it('folds the same entry by entry and at once', () => {
    const { ledger, state } = recordedTwice()
    expect(state).toEqual(fold(ledger.entries()))
  })

  it.each(['first', 'late'] as const)(
    'asks no more once the %s record is withdrawn, and the other counts',
    (which) => {
      const { pen, ledger, first, late } = recordedTwice()
      const struck = which === 'first' ? first.id : late.id
      const withdrawing = orderPen('one-sensor', ledger.entries())
      expect(withdrawing.orderId).toBe(pen.orderId)
      expect(withdrawing.strike(struck, technician, colleague).admitted).toBe(true)
      const after = withdrawing.state()
      expect(openHolds(after)).toEqual([])
      expect(after.closed['RR.wheel.off']?.written.entryId).toBe(which === 'first' ? late.id : first.id)
    },
  )

  it('may be settled: both stay', () => {
    const { ledger, late } = recordedTwice()
    const settling = orderPen('one-sensor', ledger.entries())
    settling.write(
      'hold.settled',
      { entryId: late.id, words: wordsOf('both were there') },
      { by: advisor, deviceId: null },
    )
    expect(openHolds(settling.state())).toEqual([])
  })

  it('is refused where the writer had heard of the first record', () => {
    const { pen, late } = recordedTwice()
    const { appended } = deliverLate(
      pen,
      { ...late, id: late.id },
      { seq: pen.entries().length, waited: true },
    )
    expect(appended).toMatchObject({ admitted: false, code: 'STEP_ALREADY_CLOSED' })
  })
})

describe('what a tablet recorded before it heard what others had written', () => {
  it('is kept where the customer took the Yes back meanwhile', () => {
    const pen = oneSensorJob('decided')
    const seq = pen.entries().length
    const [step] = pen.state().plan?.plan.steps.filter(({ bundleKey }) => bundleKey !== null) ?? []
    if (!step) throw new RangeError('the plan has no authorized step')
    workUntil(pen, (key) => key === step.stepKey)
    const late = recordOf(pen, step.stepKey)
    pen.write('estimate.decided', decisionOf(pen, answersOf(pen, 'declined')), {
      by: advisor,
      deviceId: null,
    })
    const { appended, state } = deliverLate(pen, late, {
      seq: Math.max(seq, pen.entries().length - 1),
      waited: false,
    })
    expect(appended.admitted).toBe(true)
    expect(holdsOf(state)).toMatchObject([{ code: 'heard-late', gate: 'seal' }])
  })

  it('keeps the road shut where it is a round on a wheel that somebody found not right', () => {
    const pen = oneSensorJob('decided')
    const isRound = (key: string) => stepOf(pen.state(), (one) => one === key).closedBy === 'studs.torqued'
    workUntil(pen, isRound)
    const late = recordOf(pen, stepOf(pen.state(), isRound).stepKey)
    const seq = pen.entries().length
    pen.write(
      'trouble.found',
      { stepKey: null, wheel: 'RR', what: 'stud', words: wordsOf('bent') },
      { by: technician },
    )
    const { appended, state } = deliverLate(pen, late, { seq, waited: false })
    expect(appended.admitted).toBe(true)
    expect(holdsOf(state)).toEqual([
      { code: 'heard-late', gate: 'road', values: { refusal: 'STEP_OUT_OF_ORDER' } },
    ])
    expect(roadGate(state).map(({ code }) => code)).toContain('heard-late')
  })

  it('is kept where the vehicle left out of reach and another tablet had taken back what secured a wheel', () => {
    const pen = oneSensorJob('decided')
    const drive = stepOf(pen.state(), (key) => key.endsWith('proof.drive'))
    workUntil(pen, (key) => key === drive.stepKey)
    const seq = pen.entries().length
    const how = { by: colleague, deviceId: otherTablet }
    const odometerOut = { value: 88_141, unit: 'mi' } as const
    const left = pen.draft('drive.left', { stepKey: drive.stepKey, odometerOut }, how)
    const check = pen.entries().find(({ kind }) => kind === 'torque.checked')
    expect(pen.strike(check?.id ?? '', technician, lead)).toMatchObject({ admitted: true })
    const { appended, state } = deliverLate(pen, left, { seq, waited: true })
    expect(appended.admitted).toBe(true)
    expect(holdsOf(state)).toMatchObject([{ code: 'heard-late', gate: 'seal' }])
    expect(sealGate(state).map(({ code }) => code)).toContain('heard-late')
    // What the other tablet recorded keeps it off the road by itself.
    expect(roadGate(state)).not.toEqual([])
    expect(deliverLate(pen, left, { seq: seq + 1, waited: true }).appended).toMatchObject({ admitted: false })
  })

  it('is refused for what its writer could know', () => {
    const pen = oneSensorJob('decided')
    const seq = pen.entries().length
    const stepKey = 'RR.wheel.off'
    const how = { by: colleague, deviceId: otherTablet }
    const late = pen.draft('wheel.removed', { stepKey, wheel: 'LF', remark: null }, how)
    pen.write('note.added', { words: wordsOf('a note') }, { by: technician })
    expect(deliverLate(pen, late, { seq, waited: true }).appended).toMatchObject({
      admitted: false,
      code: 'STEP_ON_OTHER_WHEEL',
    })
  })

  it('goes to the tray where the report is sealed', () => {
    const pen = oneSensorJob('worked')
    const seq = pen.entries().length
    const late = pen.draft('wheel.checked', arrivalOf('LF'), { by: colleague, deviceId: otherTablet })
    pen.write('report.sealed', sealOf(pen), {
      by: advisor,
      deviceId: null,
      given: { reportNumber: 'R-2602-1' },
    })
    expect(deliverLate(pen, late, { seq, waited: true }).appended).toMatchObject({
      admitted: false,
      code: 'ORDER_SEALED',
    })
  })

  it('knows what its own tablet wrote before it, though the order had read no more', () => {
    const pen = oneSensorJob('decided')
    const seq = pen.entries().length
    workUntil(pen, (key) => key === 'RR.wheel.off')
    const next = closingOf(
      pen.state(),
      stepOf(pen.state(), (key) => key === 'RR.wheel.off'),
    )
    const draft = pen.draft(next.kind, next.payload, { by: technician, deviceId: tablet })
    expect(deliverLate(pen, draft, { seq, waited: true }).appended).toMatchObject({ admitted: true })
  })
})

describe('what only the server knows', () => {
  it('of other vehicles’ sensors holds a sensor that a tablet fitted out of reach', () => {
    const pen = oneSensorJob('decided')
    workUntil(pen, (key) => stepOf(pen.state(), (one) => one === key).closedBy === 'sensor.programmed')
    const step = stepOf(
      pen.state(),
      (key) => stepOf(pen.state(), (one) => one === key).closedBy === 'sensor.programmed',
    )
    const late = recordOf(pen, step.stepKey)
    const { sensorId } = late.payload as { sensorId: string }
    const elsewhere = { idsOnOtherVehicles: new Set([sensorId]) }
    const heard = { seq: pen.entries().length, waited: false }
    expect(deliverLate(pen, late, heard, elsewhere).appended).toMatchObject({ code: 'SENSOR_ID_TAKEN' })
    const { state } = deliverLate(pen, late, { ...heard, waited: true }, elsewhere)
    expect(holdsOf(state)).toEqual([
      { code: 'heard-late', gate: 'seal', values: { refusal: 'SENSOR_ID_TAKEN' } },
    ])
  })

  it('of a gauge that went into quarantine holds what a tablet read with it out of reach', () => {
    const pen = oneSensorJob('written-up')
    const late = pen.draft('wheel.checked', arrivalOf('LF'), { by: colleague, deviceId: otherTablet })
    const facts = { gauges: new Set<string>(), gaugesInQuarantine: new Set([gauge.instrumentId]) }
    const seq = pen.entries().length
    expect(deliverLate(pen, late, { seq, waited: false }, facts).appended).toMatchObject({
      code: 'GAUGE_UNKNOWN',
    })
    const { state } = deliverLate(pen, late, { seq, waited: true }, facts)
    expect(holdsOf(state)).toEqual([
      { code: 'heard-late', gate: 'seal', values: { refusal: 'GAUGE_UNKNOWN' } },
    ])
  })

  it('takes a round of the day on which its wrench was still good, though it comes after that', () => {
    const pen = oneSensorJob('decided')
    const isRound = (key: string) => stepOf(pen.state(), (one) => one === key).closedBy === 'studs.torqued'
    workUntil(pen, isRound)
    const late = recordOf(pen, stepOf(pen.state(), isRound).stepKey)
    const now = '2026-06-16T09:00:00.000Z'
    const facts = { now, wrenches: new Map([[wrench.instrumentId, wrenchFacts()]]) }
    const { appended, state } = deliverLate(pen, late, { seq: pen.entries().length, waited: true }, facts)
    expect(appended.admitted).toBe(true)
    expect(roadGate(state).map(({ code }) => code)).toEqual(
      expect.arrayContaining(['heard-late', 'wrench-doubtful']),
    )
  })
})

describe('findings that come late', () => {
  const issuedLate = (change: (pen: OrderPen) => void) => {
    const pen = oneSensorJob('checked')
    const seq = pen.entries().length
    const late = pen.draft('diagnosis.issued', findingsOf(pen), { by: colleague, deviceId: otherTablet })
    change(pen)
    return { pen, late, ...deliverLate(pen, late, { seq, waited: false }) }
  }

  it('are kept as outdated where a reading came before them', () => {
    const { appended, state } = issuedLate((pen) =>
      pen.write(
        'wheel.checked',
        arrivalOf('LF', { gauge: { ...gaugeOf(pen), pressure: { value: 20, unit: 'psi' } } }),
        { by: technician },
      ),
    )
    expect(appended.admitted).toBe(true)
    expect(state.diagnosis?.outdated).toBe(true)
    expect(openHolds(state)).toEqual([])
  })

  it('replace none that are newer', () => {
    const { pen, state } = issuedLate((order) => {
      order.write(
        'wheel.checked',
        arrivalOf('LF', { gauge: { ...gaugeOf(order), pressure: { value: 20, unit: 'psi' } } }),
        { by: technician },
      )
      order.write('diagnosis.issued', findingsOf(order), { by: technician })
    })
    expect(state.diagnosis?.written.entryId).toBe(pen.state().diagnosis?.written.entryId)
    expect(state.diagnosis?.outdated).toBe(false)
  })

  it('by an older rule set are outdated as they come, even where nothing else was written', () => {
    const pen = oneSensorJob('checked')
    const findings = findingsOf(pen)
    const older = { ...findings, diagnosis: { ...findings.diagnosis, ruleSet: '3', findings: [] } }
    const draft = pen.draft('diagnosis.issued', older, { by: technician })
    const { appended, state } = deliverLate(pen, draft, { seq: pen.entries().length, waited: false })
    expect(appended.admitted).toBe(true)
    expect(state.diagnosis?.outdated).toBe(true)
  })

  it('that do not follow from what was read are refused', () => {
    const pen = oneSensorJob('checked')
    const seq = pen.entries().length
    const findings = findingsOf(pen)
    const made = { ...findings, diagnosis: { ...findings.diagnosis, findings: [] } }
    const draft = pen.draft('diagnosis.issued', made, { by: colleague, deviceId: otherTablet })
    pen.write('note.added', { words: wordsOf('a note') }, { by: technician })
    expect(deliverLate(pen, draft, { seq, waited: true }).appended).toMatchObject({
      code: 'DIAGNOSIS_DIFFERS',
    })
  })
})

const gaugeOf = (pen: OrderPen) => {
  const read = pen.state().arrival.wheels.LF?.gauge
  if (!read) throw new RangeError('no gauge was read')
  return { pressure: read.pressure, instrument: read.instrument }
}
