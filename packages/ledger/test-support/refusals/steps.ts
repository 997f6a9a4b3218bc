import type { Appended } from '../../src/append.ts'
import { digestOf } from '../../src/digests.ts'
import type { PayloadOf } from '../../src/registry.ts'
import { answersOf, decisionOf, findingsOf, oneSensorJob, workUntil } from '../one-sensor-job.ts'
import type { OrderPen } from '../order-pen.ts'
import { wordsOf } from '../seeded-ids.ts'
import { advisor, technician } from '../shop.ts'
import { tarn } from '../tarn.ts'
import {
  bay,
  before,
  changedEstimate,
  closeStep,
  dearer,
  desk,
  lastOf,
  type Refusals,
  replanned,
  unverified,
  withoutTorque,
} from './setting.ts'

const rotationKey = 'vehicle.rotation.tires'

export const stepsRefusals: Refusals<
  | 'STEP_NOT_PLANNED'
  | 'STEP_OF_OTHER_KIND'
  | 'STEP_ALREADY_CLOSED'
  | 'STEP_OUT_OF_ORDER'
  | 'STEP_NOT_AUTHORIZED'
  | 'STEP_ON_OTHER_WHEEL'
  | 'STEP_VALUE_MISSING'
  | 'SHEET_NOT_ON_FILE'
  | 'STEP_NOT_SET_ASIDE'
  | 'ROTATION_NOT_ALLOWED'
  | 'FIGURE_MISSING'
  | 'FIGURE_UNVERIFIED'
  | 'FIGURE_CONFIRMED_BY_WRITER'
  | 'ARRIVAL_INCOMPLETE'
> = {
  STEP_NOT_PLANNED: [
    [
      'a step that the plan does not hold',
      () => {
        const pen = before('RR.wheel.off')
        return pen.attempt('wheel.removed', { stepKey: 'LF.wheel.off', wheel: 'LF', remark: null }, bay)
      },
      { stepKey: 'LF.wheel.off' },
    ],
  ],
  STEP_OF_OTHER_KIND: [
    [
      'a step closed by another kind of entry',
      () => before('RR.wheel.off').attempt('step.closed', { stepKey: 'RR.wheel.off', value: null }, bay),
      { why: 'other-kind', step: { stepKey: 'RR.wheel.off' } },
    ],
    [
      'a closing step closed by what was seen on arrival',
      () => closeStep<'wheel.checked'>(before('LF.closing.read'), 'LF.closing.read', { phase: 'arrival' }),
      { why: 'other-moment', step: { stepKey: 'LF.closing.read' } },
    ],
    [
      'a look inside that was one from outside',
      () => closeStep<'tire.inspected'>(before('RR.tire.inside'), 'RR.tire.inside', { when: 'arrival' }),
      { why: 'other-moment', step: { stepKey: 'RR.tire.inside' } },
    ],
    [
      'another step closed by what was seen before a rotation',
      () =>
        closeStep<'step.closed'>(before('RR.tire.open'), 'RR.tire.open', {
          value: { arrows: [], sizes: {} },
        }),
      { why: 'other-kind', step: { stepKey: 'RR.tire.open' } },
    ],
  ],
  STEP_ALREADY_CLOSED: [
    [
      'a step done twice',
      () => closeStep(before('RR.tire.open'), 'RR.wheel.off'),
      { step: { stepKey: 'RR.wheel.off' } },
    ],
  ],
  STEP_OUT_OF_ORDER: [
    [
      'a step before its forerunner',
      () => closeStep(before('RR.wheel.off'), 'RR.tire.open'),
      { why: 'forerunner', first: { stepKey: 'RR.wheel.off' } },
    ],
    [
      'torque without a sheet',
      () => {
        const pen = before('RR.studs.torque-half')
        pen.strike(lastOf(pen, 'sheet.chosen'), advisor)
        return closeStep(pen, 'RR.studs.torque-half')
      },
      { why: 'no-sheet' },
    ],
  ],
  STEP_NOT_AUTHORIZED: [
    [
      'a step of a bundle that is declined now',
      () => {
        const pen = before('RR.wheel.off')
        pen.write('estimate.issued', changedEstimate(pen, dearer), desk)
        pen.write('estimate.decided', decisionOf(pen, answersOf(pen, 'declined')), desk)
        return closeStep(pen, 'RR.wheel.off')
      },
      { step: { stepKey: 'RR.wheel.off' } },
    ],
  ],
  STEP_ON_OTHER_WHEEL: [
    [
      'a wheel step recorded at another wheel',
      () => closeStep<'wheel.removed'>(before('RR.wheel.off'), 'RR.wheel.off', { wheel: 'LR' }),
      { why: 'other-wheel', wheel: 'RR', found: 'LR' },
    ],
    [
      'another wheel than the rotation brings to a place',
      () => {
        const pen = replanned([{ kind: 'rotate', pattern: 'rearward-cross' }])
        workUntil(pen, (key) => key === 'LF.wheel.on')
        return closeStep<'wheel.mounted'>(pen, 'LF.wheel.on', { cameFrom: 'LF' })
      },
      { why: 'other-mark', wheel: 'LR', found: 'LF' },
    ],
  ],
  STEP_VALUE_MISSING: [
    [
      'a closing read that read nothing',
      () => closeStep<'wheel.checked'>(before('LF.closing.read'), 'LF.closing.read', { sensor: null }),
      { step: { stepKey: 'LF.closing.read' } },
    ],
    [
      'a light that was not watched',
      () =>
        closeStep<'telltale.observed'>(before('vehicle.closing.light'), 'vehicle.closing.light', {
          behavior: null,
        }),
      { step: { stepKey: 'vehicle.closing.light' } },
    ],
    [
      'a look inside that says nothing',
      () => closeStep<'tire.inspected'>(before('RR.tire.inside'), 'RR.tire.inside', { inside: null }),
      { step: { stepKey: 'RR.tire.inside' } },
    ],
  ],
  SHEET_NOT_ON_FILE: [
    [
      'a sheet whose figures somebody verified without ever having typed their PIN for it',
      () => {
        const pen = oneSensorJob('confirmed', 'unfiled')
        const { placard, ...sources } = tarn.sources
        const forged = { ...tarn, sources: { ...sources, placard: { ...placard, verifiedBy: advisor.id } } }
        return pen.attempt(
          'sheet.chosen',
          { sheet: forged },
          { ...desk, facts: { sheetsOnFile: new Set([digestOf(tarn)]) } },
        )
      },
    ],
  ],
  STEP_NOT_SET_ASIDE: [
    [
      'the look inside a tire that was opened, as not needed',
      () => setAside(before('RR.tire.inside'), 'RR.tire.inside'),
      { step: { stepKey: 'RR.tire.inside' } },
    ],
    [
      'the look inside while the tire is still to be opened',
      () => setAside(before('RR.tire.open'), 'RR.tire.inside'),
      { step: { stepKey: 'RR.tire.inside' } },
    ],
    [
      'the look at the tires before a rotation',
      () => setAside(replanned([{ kind: 'rotate', pattern: 'cross' }]), rotationKey),
      { step: { stepKey: rotationKey } },
    ],
  ],
  ROTATION_NOT_ALLOWED: [
    ['a rotation that is allowed in words', () => rotated('every tire may go'), { why: 'in-words' }],
    [
      'tires with an arrow that would change sides',
      () => rotated({ arrows: ['LF'], sizes: {} }),
      {
        why: 'tires',
        refusals: [{ fault: 'directional', from: 'LF', to: 'RR' }],
        allowed: ['front-to-back', 'forward-cross'],
      },
    ],
    [
      'a tire of another size than the sheet has',
      () => rotated({ arrows: [], sizes: { RR: '225/65R17 102H' } }),
      { why: 'tires', allowed: [] },
    ],
  ],
  FIGURE_MISSING: [
    [
      'a torque round without a figure',
      () => {
        const pen = withoutTorque()
        workUntil(pen, (key) => key === 'vehicle.confirm.stud-torque')
        return closeStep(pen, 'RR.wheel.on')
      },
      { figure: 'studTorque' },
    ],
    [
      'a figure confirmed that nobody has entered',
      () =>
        withoutTorque().attempt(
          'figure.confirmed',
          { figure: 'studTorque', reference: 'page 312', stepKey: null },
          { ...desk, facts: { staff: new Map([[advisor.id, ['advisor', 'lead']]]) } },
        ),
      { figure: 'studTorque' },
    ],
  ],
  FIGURE_UNVERIFIED: [
    [
      'a torque round at a figure that nobody confirmed',
      () => {
        const pen = unverified()
        pen.write('step.set_aside', { stepKey: 'vehicle.confirm.stud-torque', reason: wordsOf('why') }, bay)
        workUntil(pen, (key) => key === 'RR.studs.torque-half')
        return closeStep(pen, 'RR.studs.torque-half')
      },
      { figure: 'studTorque' },
    ],
  ],
  FIGURE_CONFIRMED_BY_WRITER: [
    [
      'a figure confirmed by whoever entered it',
      () =>
        unverified().attempt(
          'figure.confirmed',
          { figure: 'studTorque', reference: 'page 312', stepKey: 'vehicle.confirm.stud-torque' },
          { ...desk, facts: { staff: new Map([[advisor.id, ['advisor', 'lead']]]) } },
        ),
      { figure: 'studTorque' },
    ],
  ],
  ARRIVAL_INCOMPLETE: [
    [
      'findings confirmed before everything was read',
      () => {
        const pen = oneSensorJob('written-up')
        const { id } = pen.write('diagnosis.issued', findingsOf(pen), bay)
        return pen.attempt('diagnosis.confirmed', { diagnosisId: id, verdict: { agrees: true } }, bay)
      },
      { before: 'findings', reason: { code: 'surroundings', wheel: null, values: {} } },
    ],
    [
      'a wheel taken off after an arrival reading was withdrawn',
      () => {
        const pen = before('RR.wheel.off')
        pen.strike(lastOf(pen, 'module.read'), technician)
        return closeStep(pen, 'RR.wheel.off')
      },
      { before: 'wheel-removal', reason: { code: 'control-module', wheel: null, values: {} } },
    ],
  ],
}

const setAside = (pen: OrderPen, stepKey: string): Appended =>
  pen.attempt('step.set_aside', { stepKey, reason: wordsOf('why') }, bay)

const rotated = (value: PayloadOf<'step.closed'>['value']): Appended =>
  closeStep<'step.closed'>(replanned([{ kind: 'rotate', pattern: 'cross' }]), rotationKey, { value })
