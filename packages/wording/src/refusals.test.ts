import type { DeliveryRefusalCode, RefusalCode } from '@bayledger/ledger/admit/refusal-codes'
import type { RefusalValues } from '@bayledger/ledger/admit/refusal-values'
import type { GateReason } from '@bayledger/ledger/questions/gate-reason'
import type { PartRefusal } from '@bayledger/reckoning/sensor/part-match'
import { describe, expect, it } from 'vitest'
import { faultOf } from '../test-support/plain-sentence.ts'
import { english } from './en/english.ts'
import { refusalWords } from './refusals.ts'

const step = {
  stepKey: 'RR.wheel.off',
  code: 'take-wheel-off',
  wheel: 'RR',
  round: null,
  values: {},
} as const
const bundle = { bundleKey: 'sensor', title: 'sensor', wheels: ['RR'], asWritten: null } as const
const reason: GateReason = { code: 'wheel-unchecked', wheel: 'LR', values: {} }
const psi = (value: number) => ({ value, unit: 'psi' }) as const
const pounds = (value: number) => ({ value, unit: 'lbf·ft' }) as const
const parts: PartRefusal[] = [
  { aspect: 'frequency', foundMHz: [315], wantedMHz: 433.92 },
  { aspect: 'stem', found: 'snap-in', wanted: ['clamp-in'] },
  { aspect: 'stem-pressure', ratedPsi: 65, highestColdPsi: 72 },
  { aspect: 'stem-speed', ratedKmh: 210, fastestKmh: 240 },
  { aspect: 'hole', foundMillimeters: 8.8, wantedMillimeters: 11.5 },
  { aspect: 'protocol', wanted: 'P-433' },
  { aspect: 'age', age: 'past-shelf-limit' },
  { aspect: 'age', age: 'quarantine' },
  { aspect: 'age', age: 'not-yet-made' },
  { aspect: 'state', state: 'programmed', for: 'a Linnet 2019' },
  { aspect: 'state', state: 'held-back', why: 'The maker recalled it.' },
  { aspect: 'state', state: 'fitted' },
  { aspect: 'state', state: 'returned' },
  { aspect: 'state', state: 'quarantine' },
  { aspect: 'state', state: 'scrapped' },
]

type AnyCode = RefusalCode | DeliveryRefusalCode

/** Every case of every code. */
const cases: { readonly [Code in AnyCode]: readonly RefusalValues[Code][] } = {
  ENTRY_ID_REUSED: [{}],
  ENTRY_RESTS_ON_REFUSED: [{ entryId: 'a' }],
  ENTRY_RESTS_ON_UNKNOWN: [{ entryId: 'a' }],
  ENTRY_KIND_NOT_ALLOWED: [
    { why: 'author', kind: 'wheel.checked', author: 'customer' },
    { why: 'author', kind: 'wheel.checked', author: 'system' },
    { why: 'author', kind: 'plan.issued', author: 'staff' },
    { why: 'sealed-by-the-server', kind: 'report.sealed' },
    { why: 'link-is-the-customers', kind: 'estimate.decided' },
    { why: 'written-at-the-desk', kind: 'order.opened' },
  ],
  ROLE_NOT_ALLOWED: [{ roles: ['advisor', 'technician', 'lead', 'manager', 'owner'] }, { roles: ['owner'] }],
  REFUND_NOT_ALLOWED: [{ roles: ['manager', 'owner'] }],
  REFUND_UNCLEAR: [{}],
  REFUND_OVER_PAID: [
    { method: 'cash', leftCents: 0 },
    { method: 'card', leftCents: 4_050 },
  ],
  ORDER_NOT_OPENED: [{}],
  ORDER_ALREADY_OPENED: [{}],
  ORDER_PARTS_UNKNOWN: [{ part: 'customer' }, { part: 'vehicle' }, { part: 'location' }],
  ORDER_ENDED: [{}],
  ORDER_SEALED: [{}],
  STEP_NOT_PLANNED: [{ stepKey: 'LF.wheel.off' }],
  STEP_OF_OTHER_KIND: [
    { why: 'other-kind', step },
    { why: 'other-moment', step: { ...step, wheel: null } },
  ],
  STEP_ALREADY_CLOSED: [{ step }],
  STEP_OUT_OF_ORDER: [
    { why: 'forerunner', first: step },
    { why: 'forerunner', first: null },
    { why: 'no-sheet' },
  ],
  STEP_NOT_AUTHORIZED: [{ step }],
  STEP_ON_OTHER_WHEEL: [
    { why: 'other-wheel', wheel: 'RR', found: 'LR' },
    { why: 'other-mark', wheel: 'RR', found: 'LR' },
    { why: 'other-mark', wheel: 'RR', found: null },
  ],
  STEP_VALUE_MISSING: [{ step }],
  SHEET_NOT_ON_FILE: [{}],
  STEP_NOT_SET_ASIDE: [{ step }],
  FIGURE_MISSING: [{ figure: 'placard' }, { figure: 'studTorque' }, { figure: 'frequency' }],
  FIGURE_UNVERIFIED: [{ figure: 'placard' }, { figure: 'studTorque' }, { figure: 'frequency' }],
  FIGURE_CONFIRMED_BY_WRITER: [{ figure: 'placard' }, { figure: 'studTorque' }, { figure: 'frequency' }],
  ARRIVAL_INCOMPLETE: [
    { before: 'findings', reason },
    { before: 'wheel-removal', reason },
  ],
  AUTHORITY_MISSING: [{ to: 'look' }, { to: 'drive' }],
  READING_IMPOSSIBLE: [{ wheel: 'LF', found: psi(350), lowestPsi: -20, highestPsi: 150 }],
  GAUGE_UNKNOWN: [{ gauge: 'G-2' }],
  DIAGNOSIS_DIFFERS: [{}],
  DIAGNOSIS_NOT_CURRENT: [{}],
  STOP_NOT_FOUND: [
    { finding: 'stem-leaking', stops: true },
    { finding: 'stem-leaking', stops: false },
  ],
  ESTIMATE_REVISION_STALE: [
    { to: 'issue', newest: 1 },
    { to: 'show', newest: 2 },
    { to: 'answer', newest: 2 },
  ],
  ESTIMATE_DIGEST_DIFFERS: [{ to: 'issue' }, { to: 'answer' }],
  ESTIMATE_TOTALS_DIFFER: [{}],
  DISCOUNT_OVER_LIMIT: [
    { bundle, limitPercentThousandths: 0 },
    { bundle, limitPercentThousandths: 12_500 },
  ],
  ESTIMATE_COVER_UNCLEAR: (['differs', 'open', 'price', 'reason', 'role'] as const).map((why) => ({
    bundle,
    why,
  })),
  ESTIMATE_FINDINGS_UNCONFIRMED: [{}],
  ESTIMATE_SENSOR_FORBIDDEN: [{}],
  ESTIMATE_SENSOR_SILENCED: [{ wheels: ['LF', 'RF', 'LR'] }],
  ESTIMATE_BUNDLES_UNCLEAR: [{}],
  ESTIMATE_SAFETY_DROPPED: [{ bundle }],
  BUNDLE_UNKNOWN: [{ bundleKey: 'sensor' }],
  BUNDLE_ALREADY_DECIDED: [
    { bundle },
    { bundle, why: 'authorized' },
    { bundle, why: 'declined' },
    { bundle, why: 'agreed-before' },
  ],
  BUNDLE_WORK_BEGAN: [
    { bundle, why: 'step', step },
    { bundle, why: 'not-right', step },
    { bundle, why: 'lifted' },
  ],
  BUNDLE_ALTERNATIVES_BOTH: [{ bundle }],
  CAUTION_NOT_SHOWN: [{ bundle }],
  MONEY_MISSING: [{}],
  SHOWN_MISSING: [{}],
  CONSENT_NOT_WRITERS: [{}],
  CHECK_UNKNOWN: [{ field: 'wheels.RR.color' }],
  TROUBLE_WITHOUT_WHEEL: [{}],
  WHEEL_PARKED: [
    { wheel: 'LF', what: 'stud', waitsFor: 'answer' },
    { wheel: 'LF', what: 'cord', waitsFor: 'part' },
    { wheel: 'RR', what: 'thread', waitsFor: 'repair' },
  ],
  PUNCTURE_IMPOSSIBLE: [{ wheel: 'LF', millimeters: 60, mostMillimeters: 50 }],
  PUNCTURE_CONTRADICTED: (['no-damage', 'no-hole', 'alone', 'touching'] as const).map((why) => ({
    wheel: 'LF',
    why,
  })),
  SPARE_NOT_SOUND: (['none', 'not-checked', 'damaged', 'no-help', 'one-spare'] as const).map((why) => ({
    why,
  })),
  TIRE_SIZE_UNREAD: [{ wheel: 'LF', found: '215/60' }],
  TIRE_DATE_UNREAD: [{ wheel: 'LF', found: '5420' }],
  REPAIR_NOT_JUDGED: [
    { wheel: 'LF', because: ['holes'] },
    { wheel: 'LF', because: ['width', 'overlap', 'inside', 'tread'] },
  ],
  PUNCTURE_NOT_REPAIRABLE: [{ wheel: 'LF', because: ['place', 'width'] }],
  WHEEL_NOT_OFF: [{ wheel: 'LF' }],
  WHEEL_ALREADY_OFF: [{ wheel: 'LF' }],
  WHEEL_HELD_BY_FINDING: [{ wheel: 'LF', finding: 'run-low-damage-possible' }],
  WHEEL_NOT_TORQUED: [
    { why: 'off', wheel: 'LF' },
    { why: 'lowering', wheel: 'LF' },
    { why: 'not-torqued', wheel: 'LF' },
  ],
  WHEEL_NOT_SECURED: [{ wheel: 'LF' }],
  WORK_HELD_BY_FINDING: [{ gate: 'inflation', wheel: 'LF', finding: 'run-low-damage-possible' }],
  SENSOR_BROKEN_OPEN: [{ wheel: 'LF' }],
  SENSOR_FREQUENCY_WRONG: [{ foundMHz: 315, wantedMHz: 433.92 }],
  SENSOR_ID_TAKEN: [{ wheel: 'LF' }, { wheel: null }],
  SENSOR_ID_DIFFERS: [{ programmed: '2CF7', found: '7777' }],
  PART_DOES_NOT_MATCH: [...parts.map((part) => ({ refusals: [part] })), { refusals: parts }],
  TORQUE_DIFFERS_FROM_SHEET: [{ sheet: pounds(80), found: pounds(90) }],
  TORQUE_ROUND_INCOMPLETE: [
    { why: 'count', fastener: 'nut', count: 5, found: 4 },
    { why: 'clicks', clicked: 4, total: 5 },
    { why: 'moved', fastener: 'bolt', total: 5 },
  ],
  WRENCH_OVERDUE: [
    { why: 'day', wrench: 'TW-1', dueOn: '2026-01-01' },
    { why: 'cycles', wrench: 'TW-1', cycles: 5_000, dueAt: 5_000 },
  ],
  WRENCH_OUT_OF_RANGE: [{ wrench: 'TW-1', found: pounds(20), low: 40, high: 200, unit: 'lbf·ft' }],
  WRENCH_UNKNOWN: [{ wrench: 'TW-9' }],
  SECOND_PERSON_IS_DOER: [{ to: 'check-torque' }, { to: 'agree' }],
  SECOND_PERSON_UNKNOWN: [{}],
  SECOND_PERSON_ROLE_NOT_ALLOWED: [{ roles: ['technician', 'lead', 'manager', 'owner'] }],
  SECOND_PERSON_UNPROVEN: [{}],
  SOLE_WORKER_TOO_SOON: [{ minutes: 5 }],
  PRESSURE_TARGET_DIFFERS: [
    { why: 'changed' },
    { why: 'no-figure' },
    { why: 'label-over-sidewall', label: psi(80), sidewallMaximum: psi(51) },
  ],
  PRESSURE_OVER_SIDEWALL: [{ wheel: 'LF', found: psi(52), maximumPsi: 51 }],
  PRESSURE_NOT_ON_TARGET: [{ side: 'under', found: psi(34), targetPsi: 36.5, overPsi: 1.5 }],
  ROAD_GATE_CLOSED: [{ reason }],
  COMEBACK_OF_ANOTHER_VEHICLE: [{}],
  COMEBACK_NOT_JUDGED: (
    ['no-comeback', 'findings-unconfirmed', 'words-missing', 'cause-missing'] as const
  ).map((why) => ({ why })),
  VEHICLE_OF_ANOTHER_CUSTOMER: [{}],
  ASSIGNEE_UNKNOWN: [{}],
  BALANCE_UNCLEAR: [
    { why: 'in-words' },
    { why: 'impossible', side: 'inner', found: 12.5, unit: 'oz', most: 12 },
    { why: 'over', side: 'outer', found: 14, unit: 'g', limitGrams: 10 },
  ],
  ROTATION_NOT_ALLOWED: [
    { why: 'in-words' },
    { why: 'tires', refusals: [{ fault: 'directional', from: 'LF', to: 'RR' }], allowed: ['front-to-back'] },
  ],
  ODOMETER_BACKWARDS: [{}],
  DRIVE_LONGER_THAN_ORDER: [{ minutes: 600, orderMinutes: 38 }],
  ODOMETER_IMPLAUSIBLE: [
    { why: 'impossible', read: { value: 999_999, unit: 'mi' }, before: null },
    { why: 'backwards', read: { value: 5, unit: 'mi' }, before: { value: 10, unit: 'mi' } },
    { why: 'unlikely', read: { value: 600_000, unit: 'mi' }, before: null },
    { why: 'unlikely', read: { value: 900, unit: 'mi' }, before: { value: 10, unit: 'mi' } },
    { why: 'unlikely', read: { value: 90_000, unit: 'mi' }, before: { value: 10, unit: 'mi' }, daysAgo: 1 },
    { why: 'lower', read: { value: 5, unit: 'mi' }, before: { value: 10, unit: 'mi' }, daysAgo: 30 },
    { why: 'nines', read: { value: 99_999, unit: 'mi' }, before: null, daysAgo: null },
    {
      why: 'beyond-drive',
      read: { value: 15, unit: 'mi' },
      before: { value: 10, unit: 'mi' },
      daysAgo: null,
    },
  ],
  PAYMENT_UNKNOWN: [{}],
  PAYMENT_CHANGES_NOTHING: [{}],
  PHOTO_TOO_LARGE: [{ bytes: 41_200_000 }],
  PHOTO_UNKNOWN: [{}],
  REPORT_HEAD_MOVED: [{}],
  SEAL_GATE_CLOSED: [{ reason }],
  REPORT_NOT_SEALED: [{}],
  REPORT_SUPERSEDES_OTHER: [{}],
  HAND_BACK_GATE_CLOSED: [{ reason }],
  RELEASE_NOT_AGREED: [{}],
  HOLD_UNKNOWN: [{}],
  STRIKE_TARGET_UNKNOWN: [{}],
  STRIKE_NOT_ALLOWED: [{}],
  STRIKE_ALREADY_STRUCK: [{}],
  STRIKE_NOT_OWN: [{}],
  STRIKE_NEEDS_SECOND_PERSON: [{ to: 'undo' }, { to: 'withdraw' }],
  PLAN_NOT_BY_SYSTEM: [{}],
  ENTRY_INVALID: [{ fields: ['payload.wheel'] }],
  SIDE_MISSING: [{}],
  WRITER_NOT_ACTIVE: [{}],
  TABLET_PUT_OUT: [{}],
}

describe('a refusal', () => {
  for (const [code, values] of Object.entries(cases) as [AnyCode, readonly RefusalValues[AnyCode][]][])
    it.each(values)(`${code} of %j says in plain sentences what is wrong`, (of) => {
      const words = refusalWords(english.refusals, { code, values: of })
      expect(faultOf(words)).toBeNull()
      expect(words.length).toBeGreaterThan(20)
    })

  it('names a finding by its title', () => {
    expect(
      refusalWords(english.refusals, {
        code: 'WHEEL_HELD_BY_FINDING',
        values: { wheel: 'LF', finding: 'run-low-damage-possible' },
      }),
    ).toContain('Tire may be damaged inside from running low')
  })

  it('says why a gate is shut', () => {
    expect(refusalWords(english.refusals, { code: 'ROAD_GATE_CLOSED', values: { reason } })).toBe(
      'The vehicle may not move on the road. The left rear wheel is torqued and unchecked: a second person checks it.',
    )
  })
})
