import { answersOf, decide, decisionOf, oneSensorJob, workUntil } from '../one-sensor-job.ts'
import type { OrderPen } from '../order-pen.ts'
import { idOf, wordsOf } from '../seeded-ids.ts'
import { linkId, technician } from '../shop.ts'
import { desk, type Refusals, withAlternative } from './setting.ts'

export const answersRefusals: Refusals<
  | 'BUNDLE_UNKNOWN'
  | 'BUNDLE_ALREADY_DECIDED'
  | 'BUNDLE_WORK_BEGAN'
  | 'BUNDLE_ALTERNATIVES_BOTH'
  | 'CAUTION_NOT_SHOWN'
  | 'SHOWN_MISSING'
  | 'CONSENT_NOT_WRITERS'
> = {
  BUNDLE_UNKNOWN: [
    [
      'an answer to something that was not offered',
      () => {
        const pen = oneSensorJob('shown')
        return pen.attempt(
          'estimate.decided',
          decisionOf(pen, [
            { bundleKey: 'wipers', answer: 'authorized', deferredUntil: null, cautionsShown: [] },
          ]),
          desk,
        )
      },
      { bundleKey: 'wipers' },
    ],
  ],
  BUNDLE_ALREADY_DECIDED: [
    [
      'a second answer to the same version',
      () => {
        const pen = oneSensorJob('decided')
        return pen.attempt('estimate.decided', decisionOf(pen, answersOf(pen, 'authorized')), desk)
      },
      { bundle: { bundleKey: 'sensor.RR' }, why: 'authorized' },
    ],
    [
      'another No after a No',
      () => {
        const pen = oneSensorJob('shown')
        decide(pen, 'declined')
        return pen.attempt('estimate.decided', decisionOf(pen, answersOf(pen, 'declined')), desk)
      },
      { bundle: { bundleKey: 'sensor.RR' }, why: 'declined' },
    ],
    [
      'a Yes after a No that comes by the link',
      () => {
        const pen = oneSensorJob('shown')
        decide(pen, 'declined')
        return pen.attempt(
          'estimate.decided',
          decisionOf(pen, answersOf(pen, 'authorized'), {
            consent: { channel: 'link', linkId, signature: { form: 'typed', digest: wordsOf('name') } },
          }),
          { by: { linkId } },
        )
      },
      { bundle: { bundleKey: 'sensor.RR' }, why: 'declined' },
    ],
    [
      'a No to the inspection that was agreed to before',
      () => {
        const pen = oneSensorJob('shown')
        return pen.attempt(
          'estimate.decided',
          decisionOf(pen, [
            { bundleKey: 'look', answer: 'declined', deferredUntil: null, cautionsShown: [] },
          ]),
          desk,
        )
      },
      { bundle: { bundleKey: 'look' }, why: 'agreed-before' },
    ],
  ],
  BUNDLE_WORK_BEGAN: [
    [
      'a Yes taken back while the vehicle is lifted',
      () => {
        const pen = oneSensorJob('decided')
        pen.write('step.closed', { stepKey: 'vehicle.lift.up', value: null }, { by: technician })
        return pen.attempt('estimate.decided', decisionOf(pen, answersOf(pen, 'declined')), desk)
      },
      { why: 'lifted' },
    ],
    [
      'a Yes taken back after its wheel came off',
      () => takeBack(oneSensorJob('decided'), 'RR.tire.open'),
      { bundle: { bundleKey: 'sensor.RR' }, why: 'step' },
    ],
    [
      'a Yes taken back after something was not right at its wheel',
      () => {
        const pen = oneSensorJob('decided')
        pen.write(
          'trouble.found',
          { stepKey: 'RR.wheel.off', wheel: 'RR', what: 'seized', words: null },
          { by: technician },
        )
        return pen.attempt('estimate.decided', decisionOf(pen, answersOf(pen, 'declined')), desk)
      },
      { why: 'not-right', step: { code: 'take-wheel-off' } },
    ],
  ],
  BUNDLE_ALTERNATIVES_BOTH: [
    [
      'a Yes to both of two alternatives',
      () => {
        const pen = withAlternative()
        return pen.attempt('estimate.decided', decisionOf(pen, answersOf(pen, 'authorized')), desk)
      },
      { bundle: { bundleKey: 'sensor.other' } },
    ],
  ],
  CAUTION_NOT_SHOWN: [
    [
      'a No to safety work without its caution',
      () => {
        const pen = oneSensorJob('shown')
        const answers = answersOf(pen, 'declined').map((answer) => ({ ...answer, cautionsShown: [] }))
        return pen.attempt('estimate.decided', decisionOf(pen, answers), desk)
      },
      { bundle: { bundleKey: 'sensor.RR' } },
    ],
  ],
  SHOWN_MISSING: [
    [
      'answers without what the customer was shown',
      () => {
        const pen = oneSensorJob('shown')
        return pen.attempt(
          'estimate.decided',
          decisionOf(pen, answersOf(pen, 'authorized'), { shown: null }),
          desk,
        )
      },
    ],
  ],
  CONSENT_NOT_WRITERS: [
    [
      'a consent by link that the desk writes',
      () => {
        const pen = oneSensorJob('shown')
        return pen.attempt(
          'estimate.decided',
          decisionOf(pen, answersOf(pen, 'authorized'), {
            consent: { channel: 'link', linkId, signature: { form: 'typed', digest: wordsOf('name') } },
          }),
          desk,
        )
      },
    ],
    [
      'a link that writes for another link',
      () => {
        const pen = oneSensorJob('shown')
        return pen.attempt(
          'estimate.decided',
          decisionOf(pen, answersOf(pen, 'authorized'), {
            consent: {
              channel: 'link',
              linkId: idOf('other-link'),
              signature: { form: 'typed', digest: wordsOf('name') },
            },
          }),
          { by: { linkId } },
        )
      },
    ],
  ],
}

/** A No to the sensor after its Yes, once the job has come to this step. */
const takeBack = (pen: OrderPen, stepKey: string) => {
  workUntil(pen, (key) => key === stepKey)
  return pen.attempt('estimate.decided', decisionOf(pen, answersOf(pen, 'declined')), desk)
}
