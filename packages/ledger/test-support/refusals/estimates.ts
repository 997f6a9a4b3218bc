import { coverBundle } from '@bayledger/reckoning/money/cover-bundles'
import { roadPositions } from '@bayledger/reckoning/wheels'
import { keptMoney } from '../money.ts'
import {
  answersOf,
  arrivalOf,
  decide,
  decisionOf,
  estimateOf,
  findingsOf,
  oneSensorJob,
  owner,
  stageWriters,
} from '../one-sensor-job.ts'
import { wordsOf } from '../seeded-ids.ts'
import { agreedBy, gauge, lead, manager } from '../shop.ts'
import { tarn } from '../tarn.ts'
import { attemptCovered, comeback, coverOf, decidedAgainst, withoutMiles } from './comebacks.ts'
import {
  attemptEstimate,
  bay,
  changedEstimate,
  desk,
  lastOf,
  onlyTheLook,
  plainStem,
  type Refusals,
  withDiscount,
  workedBy,
} from './setting.ts'

const excused = { field: 'answer', why: wordsOf('why') }

export const estimatesRefusals: Refusals<
  | 'DIAGNOSIS_DIFFERS'
  | 'DIAGNOSIS_NOT_CURRENT'
  | 'STOP_NOT_FOUND'
  | 'ESTIMATE_REVISION_STALE'
  | 'ESTIMATE_DIGEST_DIFFERS'
  | 'ESTIMATE_TOTALS_DIFFER'
  | 'DISCOUNT_OVER_LIMIT'
  | 'ESTIMATE_COVER_UNCLEAR'
  | 'ESTIMATE_FINDINGS_UNCONFIRMED'
  | 'ESTIMATE_SENSOR_FORBIDDEN'
  | 'ESTIMATE_SENSOR_SILENCED'
  | 'ESTIMATE_BUNDLES_UNCLEAR'
  | 'ESTIMATE_SAFETY_DROPPED'
  | 'MONEY_MISSING'
> = {
  DIAGNOSIS_DIFFERS: [
    [
      'findings that the readings do not make',
      () => {
        const pen = oneSensorJob('checked')
        const honest = findingsOf(pen)
        return pen.attempt(
          'diagnosis.issued',
          { ...honest, diagnosis: { ...honest.diagnosis, primary: 'tire-low' } },
          bay,
        )
      },
    ],
  ],
  DIAGNOSIS_NOT_CURRENT: [
    [
      'findings confirmed after a reading has changed them',
      () => {
        const pen = oneSensorJob('checked')
        const { id } = pen.write('diagnosis.issued', findingsOf(pen), bay)
        pen.write(
          'wheel.checked',
          arrivalOf('LF', { gauge: { pressure: { value: 20, unit: 'psi' }, instrument: gauge } }),
          bay,
        )
        return pen.attempt('diagnosis.confirmed', { diagnosisId: id, verdict: { agrees: true } }, bay)
      },
    ],
  ],
  STOP_NOT_FOUND: [
    [
      'a stop told that nobody found',
      () => {
        const pen = oneSensorJob('confirmed')
        return pen.attempt(
          'stop.told',
          {
            diagnosisId: lastOf(pen, 'diagnosis.issued'),
            codes: ['tire-unsafe'],
            channel: 'telephone',
            answer: wordsOf('yes'),
          },
          desk,
        )
      },
      { finding: 'tire-unsafe', stops: true },
    ],
    [
      'a refusal of a finding that is not there',
      () =>
        oneSensorJob('confirmed').attempt(
          'refusal.recorded',
          {
            codes: ['tire-unsafe'],
            cautionShown: { number: 'CT-04', version: 1 },
            proof: { kind: 'refused-to-sign', witness: agreedBy(lead) },
            leaves: 'towed',
          },
          desk,
        ),
      { finding: 'tire-unsafe', stops: false },
    ],
  ],
  ESTIMATE_REVISION_STALE: [
    [
      'an estimate that skips a version',
      () => attemptEstimate((estimate) => ({ ...estimate, revision: 2 })),
      { to: 'issue', newest: 0 },
    ],
    [
      'an old version shown',
      () => {
        const pen = oneSensorJob('estimated')
        pen.write('estimate.issued', estimateOf(pen), desk)
        return pen.attempt('estimate.shown', { revision: 1, channel: 'in-person', linkId: null }, desk)
      },
      { to: 'show', newest: 2 },
    ],
    [
      'an old version answered',
      () => {
        const pen = oneSensorJob('estimated')
        const late = decisionOf(pen, answersOf(pen, 'authorized'))
        pen.write('estimate.issued', estimateOf(pen), desk)
        return pen.attempt('estimate.decided', late, desk)
      },
      { to: 'answer', newest: 2 },
    ],
  ],
  ESTIMATE_DIGEST_DIFFERS: [
    [
      'an estimate that is not what its digest names',
      () => {
        const pen = oneSensorJob('confirmed')
        return pen.attempt('estimate.issued', { ...estimateOf(pen), digest: '0'.repeat(64) }, desk)
      },
      { to: 'issue' },
    ],
    [
      'an answer to something that was not issued',
      () => {
        const pen = oneSensorJob('estimated')
        return pen.attempt(
          'estimate.decided',
          decisionOf(pen, answersOf(pen, 'authorized'), { digest: '0'.repeat(64) }),
          desk,
        )
      },
      { to: 'answer' },
    ],
  ],
  ESTIMATE_TOTALS_DIFFER: [
    [
      'an estimate one cent off',
      () =>
        attemptEstimate((estimate) => ({
          ...estimate,
          money: {
            ...estimate.money,
            totals: { ...estimate.money.totals, totalCents: estimate.money.totals.totalCents + 1 },
          },
        })),
    ],
  ],
  DISCOUNT_OVER_LIMIT: [
    [
      'a discount above the limit of its giver',
      () => attemptEstimate(withDiscount(6)),
      { bundle: { title: 'sensor', wheels: ['RR'] }, limitPercentThousandths: 5_000 },
    ],
  ],
  ESTIMATE_COVER_UNCLEAR: [
    [
      'a comeback that says nothing of its warranty',
      () => attemptCovered((bundle) => bundle),
      { bundle: { title: 'sensor', wheels: ['RR'] }, why: 'differs' },
    ],
    [
      'an odometer that the terms need and nobody read',
      () => attemptCovered(coverOf(withoutMiles), withoutMiles),
      { bundle: { title: 'sensor', wheels: ['RR'] }, why: 'open' },
    ],
    [
      'a covered line that is charged',
      () =>
        attemptCovered((bundle) => {
          const { covers } = coverBundle(bundle, comeback)
          return { ...bundle, ...(covers ? { covers } : {}) }
        }),
      { bundle: { title: 'sensor', wheels: ['RR'] }, why: 'price' },
    ],
    [
      'a decision against the terms without a reason',
      () => attemptCovered(decidedAgainst(null), comeback, manager),
      { bundle: { title: 'sensor', wheels: ['RR'] }, why: 'reason' },
    ],
    [
      'a decision against the terms by an advisor',
      () => attemptCovered(decidedAgainst('The customer broke it')),
      { bundle: { title: 'sensor', wheels: ['RR'] }, why: 'role' },
    ],
  ],
  ESTIMATE_FINDINGS_UNCONFIRMED: [
    [
      'an estimate before anyone confirmed the findings',
      () => {
        const pen = oneSensorJob('checked')
        pen.write('diagnosis.issued', findingsOf(pen), bay)
        return pen.attempt('estimate.issued', estimateOf(pen), desk)
      },
    ],
  ],
  ESTIMATE_SENSOR_FORBIDDEN: [
    [
      'a sensor sold for a vehicle that has none',
      () => {
        const pen = oneSensorJob('written-up')
        pen.write('sheet.chosen', { sheet: { ...tarn, system: 'indirect', sensor: null } }, desk)
        stageWriters.checked(pen)
        stageWriters.confirmed(pen)
        const direct = oneSensorJob('confirmed')
        return pen.attempt(
          'estimate.issued',
          { ...estimateOf(direct), diagnosisId: lastOf(pen, 'diagnosis.issued') },
          desk,
        )
      },
    ],
  ],
  ESTIMATE_SENSOR_SILENCED: [
    [
      'a plain stem where the sensor answered',
      () => attemptEstimate(workedBy([plainStem('LF')])),
      { wheels: ['LF'] },
    ],
    [
      'four plain stems where one sensor is silent',
      () => attemptEstimate(workedBy(roadPositions.map(plainStem))),
      { wheels: ['LF', 'RF', 'LR'] },
    ],
    [
      'a plain stem where the silent sensor was asked once',
      () => {
        const pen = oneSensorJob('checked')
        pen.write(
          'wheel.checked',
          arrivalOf('RR', { sensor: { answer: 'silent', tries: 1 }, notPossible: [excused] }),
          bay,
        )
        stageWriters.confirmed(pen)
        return pen.attempt('estimate.issued', changedEstimate(pen, workedBy([plainStem('RR')])), desk)
      },
      { wheels: ['RR'] },
    ],
    [
      'a plain stem on the spare, whose sensor answered',
      () => {
        const pen = oneSensorJob('checked')
        const { sensor } = arrivalOf('LF')
        if (sensor?.answer !== 'answered') throw new RangeError('no sensor to borrow')
        pen.write('wheel.checked', arrivalOf('SP', { sensor: { ...sensor, id: '0A0B0C0D' } }), bay)
        stageWriters.confirmed(pen)
        return pen.attempt('estimate.issued', changedEstimate(pen, workedBy([plainStem('SP')])), desk)
      },
      { wheels: ['SP'] },
    ],
  ],
  ESTIMATE_BUNDLES_UNCLEAR: [
    [
      'an alternative to a bundle that is not there',
      () =>
        attemptEstimate((estimate) => ({
          ...estimate,
          money: { ...estimate.money, totals: { beforeTaxCents: 0, taxCents: 0, totalCents: 0 } },
          bundles: estimate.bundles.map((bundle) => ({ ...bundle, alternativeTo: 'nowhere' })),
        })),
    ],
  ],
  ESTIMATE_SAFETY_DROPPED: [
    [
      'a new version without the sensor that the findings ask for',
      () => {
        const pen = oneSensorJob('shown')
        return pen.attempt('estimate.issued', changedEstimate(pen, onlyTheLook), desk)
      },
      { bundle: { bundleKey: 'sensor.RR' } },
    ],
    [
      'the same after a No, which would go with it',
      () => {
        const pen = oneSensorJob('shown')
        decide(pen, 'declined')
        return pen.attempt('estimate.issued', changedEstimate(pen, onlyTheLook), desk)
      },
      { bundle: { bundleKey: 'sensor.RR' } },
    ],
    [
      'a new version whose sensor is for another wheel',
      () => {
        const pen = oneSensorJob('shown')
        const elsewhere = workedBy([{ kind: 'fit-sensor', wheel: 'LF', valve: 'clamp-in', identity: 'new' }])
        return pen.attempt('estimate.issued', changedEstimate(pen, elsewhere), desk)
      },
      { bundle: { bundleKey: 'sensor.RR' } },
    ],
  ],
  MONEY_MISSING: [
    [
      'an estimate whose prices did not come with it',
      () => {
        const pen = oneSensorJob('confirmed')
        return pen.attempt('estimate.issued', estimateOf(pen), { ...desk, facts: { money: new Map() } })
      },
    ],
    [
      'an estimate whose prices cannot be read',
      () => {
        const pen = oneSensorJob('confirmed')
        const issued = estimateOf(pen)
        const money = new Map(keptMoney).set(issued.scope.money, 'ten dollars')
        return pen.attempt('estimate.issued', issued, { ...desk, facts: { money } })
      },
    ],
    [
      'a consent to look whose fee did not come with it',
      () =>
        oneSensorJob('written-up').attempt(
          'authority.given',
          {
            to: ['look'],
            by: owner,
            channel: 'in-person',
            money: '0'.repeat(64),
            lookFee: 'charged',
          },
          desk,
        ),
    ],
    [
      'a payment whose amount did not come with it',
      () =>
        oneSensorJob('worked').attempt(
          'payment.noted',
          { money: '0'.repeat(64), method: 'card', back: null },
          desk,
        ),
    ],
  ],
}
