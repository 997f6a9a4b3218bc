import { decide, handBack, oneSensorJob, sealOf, stageWriters, tireOf, workUntil } from '../one-sensor-job.ts'
import { idOf, wordsOf } from '../seeded-ids.ts'
import { advisor, agreedBy, colleague, lead, technician } from '../shop.ts'
import { bay, before, desk, lastOf, note, type Refusals, strikeOf } from './setting.ts'

export const closingRefusals: Refusals<
  | 'REPORT_HEAD_MOVED'
  | 'SEAL_GATE_CLOSED'
  | 'REPORT_NOT_SEALED'
  | 'REPORT_SUPERSEDES_OTHER'
  | 'HAND_BACK_GATE_CLOSED'
  | 'RELEASE_NOT_AGREED'
  | 'HOLD_UNKNOWN'
  | 'STRIKE_TARGET_UNKNOWN'
  | 'STRIKE_NOT_ALLOWED'
  | 'STRIKE_ALREADY_STRUCK'
  | 'STRIKE_NOT_OWN'
  | 'STRIKE_NEEDS_SECOND_PERSON'
> = {
  REPORT_HEAD_MOVED: [
    [
      'a report composed before the last entry',
      () => {
        const pen = oneSensorJob('worked')
        const composed = sealOf(pen)
        pen.write('note.added', note, desk)
        return pen.attempt('report.sealed', composed, desk)
      },
    ],
  ],
  SEAL_GATE_CLOSED: [
    [
      'a report with a step open',
      () => {
        const pen = before('vehicle.last.look')
        return pen.attempt('report.sealed', sealOf(pen), desk)
      },
      { reason: { code: 'step-open', wheel: null, values: { step: { stepKey: 'vehicle.last.look' } } } },
    ],
  ],
  REPORT_NOT_SEALED: [
    [
      'keys given back before the report',
      () => oneSensorJob('worked').attempt('order.handed_back', handBack, desk),
    ],
  ],
  REPORT_SUPERSEDES_OTHER: [
    [
      'an addendum that names no report',
      () => {
        const pen = oneSensorJob('sealed')
        return pen.attempt('report.sealed', sealOf(pen), desk)
      },
    ],
  ],
  HAND_BACK_GATE_CLOSED: [
    [
      'keys given back with a leaking stem',
      () => {
        const pen = oneSensorJob('written-up')
        stageWriters.checked(pen)
        pen.write('tire.inspected', tireOf('LF', { stem: 'leaks' }), bay)
        stageWriters.confirmed(pen)
        pen.write(
          'stop.told',
          {
            diagnosisId: lastOf(pen, 'diagnosis.issued'),
            codes: ['stem-leaking'],
            channel: 'in-person',
            answer: wordsOf('no'),
          },
          desk,
        )
        stageWriters.estimated(pen)
        decide(pen, 'declined')
        return pen.attempt('order.handed_back', { ...handBack, releaseAgreedBy: agreedBy(lead) }, desk)
      },
      {
        reason: {
          code: 'stop-open',
          wheel: null,
          values: { finding: 'stem-leaking', keeps: 'off-the-road' },
        },
      },
    ],
  ],
  RELEASE_NOT_AGREED: [
    [
      'an unproven cure released by one person',
      () => {
        const pen = before('vehicle.proof.drive')
        pen.write(
          'step.set_aside',
          { stepKey: 'vehicle.proof.drive', reason: wordsOf('customer drives it') },
          bay,
        )
        workUntil(pen, () => false)
        stageWriters.sealed(pen)
        return pen.attempt('order.handed_back', handBack, desk)
      },
    ],
  ],
  HOLD_UNKNOWN: [
    [
      'a question about a time that nobody raised, settled',
      () => {
        const pen = oneSensorJob('written-up')
        return pen.attempt(
          'hold.settled',
          { entryId: lastOf(pen, 'complaint.recorded'), words: wordsOf('looked at it') },
          desk,
        )
      },
    ],
  ],
  STRIKE_TARGET_UNKNOWN: [
    [
      'an entry of another order withdrawn',
      () => oneSensorJob('written-up').strike(idOf('elsewhere'), advisor),
    ],
  ],
  STRIKE_NOT_ALLOWED: [
    [
      'a consent withdrawn',
      () => {
        const pen = oneSensorJob('decided')
        return pen.strike(lastOf(pen, 'estimate.decided'), advisor, lead)
      },
    ],
    [
      'a withdrawal withdrawn',
      () => {
        const pen = oneSensorJob('checked')
        pen.strike(lastOf(pen, 'module.read'), technician)
        return pen.strike(lastOf(pen, 'entry.struck'), technician, lead)
      },
    ],
  ],
  STRIKE_ALREADY_STRUCK: [
    [
      'an entry withdrawn twice',
      () => {
        const pen = oneSensorJob('checked')
        pen.strike(lastOf(pen, 'module.read'), technician)
        return pen.strike(lastOf(pen, 'module.read'), technician)
      },
    ],
  ],
  STRIKE_NOT_OWN: [
    [
      "another person's entry undone",
      () => {
        const pen = oneSensorJob('checked')
        return pen.attempt('entry.struck', strikeOf(lastOf(pen, 'module.read'), { reason: 'undone' }), {
          by: colleague,
        })
      },
    ],
  ],
  STRIKE_NEEDS_SECOND_PERSON: [
    [
      'a sealed torque withdrawn alone',
      () => {
        const pen = before('RR.studs.second-check')
        return pen.strike(lastOf(pen, 'studs.torqued'), technician)
      },
      { to: 'withdraw' },
    ],
    [
      'a sealed torque undone',
      () => {
        const pen = before('RR.studs.second-check')
        return pen.attempt(
          'entry.struck',
          strikeOf(lastOf(pen, 'studs.torqued'), { reason: 'undone', secondPerson: agreedBy(lead) }),
          bay,
        )
      },
      { to: 'undo' },
    ],
  ],
}
