import type { PunctureRecord } from '../../src/subjects/arrival/kinds.ts'
import { oneSensorJob, stageWriters, tireOf, workUntil } from '../one-sensor-job.ts'
import { agreedBy, lead } from '../shop.ts'
import { bay, before, changedEstimate, closeStep, desk, type Refusals, replanned } from './setting.ts'

const nailHole = { place: 'crown', millimeters: 5, degrees: 0, overlapsRepair: false } as const

const lookedAt = (hole: PunctureRecord) =>
  oneSensorJob('written-up').attempt(
    'tire.inspected',
    tireOf('LF', { tireDamage: ['puncture'], punctures: [hole] }),
    bay,
  )

/** A tire is looked at on which this is printed. */
const sawPrint = (printed: Parameters<typeof tireOf>[1]) =>
  oneSensorJob('written-up').attempt('tire.inspected', tireOf('LF', printed), bay)

/** A tire is looked at inside without a word of holes; then its repair is closed. */
const repairedUnseen = () => {
  const pen = replanned([{ kind: 'repair-puncture', wheel: 'LF' }])
  workUntil(pen, (key) => key === 'LF.tire.inside')
  closeStep<'tire.inspected'>(pen, 'LF.tire.inside', { punctures: undefined })
  return closeStep(pen, 'LF.leak.repair')
}

/** The repair of a hole is put on the estimate, the tire having been seen from outside, or inside too. */
const priced = (hole: PunctureRecord | null, inside: boolean) => {
  const pen = inside ? before('RR.tire.inside') : oneSensorJob('checked')
  if (inside) closeStep<'tire.inspected'>(pen, 'RR.tire.inside', { punctures: hole ? [hole] : [] })
  else if (hole)
    pen.write('tire.inspected', tireOf('RR', { tireDamage: ['puncture'], punctures: [hole] }), bay)
  stageWriters.confirmed(pen)
  const payload = changedEstimate(pen, (estimate) => ({
    ...estimate,
    bundles: estimate.bundles.map((bundle, index) =>
      index === 0
        ? { ...bundle, works: [...bundle.works, { kind: 'repair-puncture', wheel: 'RR' } as const] }
        : bundle,
    ),
  }))
  return pen.attempt('estimate.issued', payload, desk)
}

/** The customer refuses what is wrong at the right rear, and the vehicle is to leave on its spare. */
const onSpare = (
  ofSpare: ('bulge' | 'cord-showing')[],
  ofWheel: Parameters<typeof tireOf>[1] = { tireDamage: ['bulge'] },
) => {
  const pen = oneSensorJob('checked')
  pen.write('tire.inspected', tireOf('SP', { tireDamage: ofSpare }), bay)
  pen.write('tire.inspected', tireOf('RR', ofWheel), bay)
  stageWriters.confirmed(pen)
  const codes = (pen.state().diagnosis?.diagnosis.findings ?? [])
    .filter(({ kind, wheels }) => kind === 'stop' && wheels.includes('RR'))
    .map(({ code }) => code)
  return pen.attempt(
    'refusal.recorded',
    {
      codes,
      cautionShown: { number: 'CT-04', version: 1 },
      proof: { kind: 'refused-to-sign', witness: agreedBy(lead) },
      leaves: 'sound-spare',
    },
    desk,
  )
}

const snappedStud = { stepKey: null, wheel: 'RR', what: 'stud', words: null } as const

/** What is wrong with a tire or a wheel, and what may not be done to it. */
export const damageRefusals: Refusals<
  | 'CHECK_UNKNOWN'
  | 'TROUBLE_WITHOUT_WHEEL'
  | 'WHEEL_PARKED'
  | 'PUNCTURE_IMPOSSIBLE'
  | 'PUNCTURE_CONTRADICTED'
  | 'TIRE_SIZE_UNREAD'
  | 'TIRE_DATE_UNREAD'
  | 'REPAIR_NOT_JUDGED'
  | 'PUNCTURE_NOT_REPAIRABLE'
  | 'SPARE_NOT_SOUND'
> = {
  CHECK_UNKNOWN: [
    [
      'a skipped check of what no check is about',
      () =>
        oneSensorJob('written-up').attempt(
          'check.skipped',
          { field: 'wheels.RR.color', why: 'no need' },
          bay,
        ),
      { field: 'wheels.RR.color' },
    ],
  ],
  TROUBLE_WITHOUT_WHEEL: [
    [
      'a broken stud of no wheel',
      () => oneSensorJob('decided').attempt('trouble.found', { ...snappedStud, wheel: null }, bay),
    ],
  ],
  WHEEL_PARKED: [
    [
      'work on a wheel with a broken stud',
      () => {
        const pen = before('RR.wheel.off')
        pen.write('trouble.found', snappedStud, bay)
        return closeStep(pen, 'RR.wheel.off')
      },
      { wheel: 'RR', what: 'stud', waitsFor: 'answer' },
    ],
  ],
  PUNCTURE_IMPOSSIBLE: [
    [
      'a hole of 60 mm',
      () => lookedAt({ ...nailHole, millimeters: 60 }),
      { wheel: 'LF', millimeters: 60, mostMillimeters: 50 },
    ],
  ],
  PUNCTURE_CONTRADICTED: [
    [
      'a hole beside a look that saw no damage',
      () =>
        oneSensorJob('written-up').attempt(
          'tire.inspected',
          tireOf('LF', { tireDamage: [], punctures: [nailHole] }),
          bay,
        ),
      { wheel: 'LF', why: 'no-damage' },
    ],
    [
      'a puncture without a hole',
      () => sawPrint({ tireDamage: ['puncture'], punctures: [] }),
      { wheel: 'LF', why: 'no-hole' },
    ],
    [
      'a distance of the only hole to another',
      () => lookedAt({ ...nailHole, fromOthers: { millimeters: 90, unitsOverlap: false } }),
      { wheel: 'LF', why: 'alone' },
    ],
    [
      'two holes in one, with repair units apart',
      () =>
        sawPrint({
          tireDamage: ['puncture'],
          punctures: [nailHole, { ...nailHole, fromOthers: { millimeters: 3, unitsOverlap: false } }],
        }),
      { wheel: 'LF', why: 'touching' },
    ],
  ],
  TIRE_SIZE_UNREAD: [
    [
      'half of a tire size',
      () => sawPrint({ sizeSeen: { readable: true, text: '215/60' } }),
      { wheel: 'LF', found: '215/60' },
    ],
  ],
  TIRE_DATE_UNREAD: [
    [
      'a week that no year has',
      () => sawPrint({ dateCodeSeen: { readable: true, text: '5420' } }),
      { wheel: 'LF', found: '5420' },
    ],
  ],
  REPAIR_NOT_JUDGED: [
    ['a repair where nobody has looked for holes', repairedUnseen, { wheel: 'LF', because: ['holes'] }],
    [
      'the price of a repair before anybody has looked inside',
      () => priced(nailHole, false),
      { wheel: 'RR', because: ['inside'] },
    ],
    [
      'the price of a repair of a hole that nobody has measured',
      () => priced({ ...nailHole, millimeters: null }, true),
      { wheel: 'RR', because: ['width'] },
    ],
    [
      'the price of a repair where the look inside saw no hole',
      () => priced(null, true),
      { wheel: 'RR', because: ['holes'] },
    ],
  ],
  SPARE_NOT_SOUND: [
    ['the spare in place of a tire, the spare being damaged', () => onSpare(['bulge']), { why: 'damaged' }],
    [
      'the spare against studs that are broken',
      () => onSpare([], { tireDamage: [], fastenerDamage: ['stud-broken'] }),
      { why: 'no-help' },
    ],
  ],
  PUNCTURE_NOT_REPAIRABLE: [
    [
      'the price of a plug in the shoulder',
      () => priced({ ...nailHole, place: 'shoulder', millimeters: 7 }, true),
      { wheel: 'RR', because: ['place', 'width'] },
    ],
  ],
}
