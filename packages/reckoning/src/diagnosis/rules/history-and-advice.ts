import { inReadingOrder, type WheelPosition } from '../../wheels.ts'
import { everythingChecked } from '../facts/everything-checked.ts'
import type { Facts } from '../facts/facts.ts'
import { groupOf } from '../finding-codes.ts'
import { groundsOf, onWheels, type RuleBook, wheelFigures } from '../rule.ts'
import { thresholds } from '../thresholds.ts'

/** What the shop's own history adds, and what is worth saying when nothing is wrong. */
export const historyAndAdviceRules = {
  comeback: {
    kind: 'also',
    confidence: 'firm',
    concludes: true,
    reads: ['history.ourWorkOn'],
    when: 'A finding is on a wheel that this shop worked on within 90 days.',
    means: 'It may be our own work that returns.',
    offers: [],
    holds: [],
    find: (facts, prior) => {
      const wheels = (facts.evidence.history?.ourWorkOn ?? []).filter((wheel) =>
        prior.codesOn(wheel).some((code) => comebackGroups.has(groupOf(code))),
      )
      return wheels.length === 0
        ? null
        : {
            wheels: inReadingOrder(wheels),
            because: () => [{ field: 'history.ourWorkOn', code: 'our-recent-work' }],
            figures: () => figuresOf(facts, wheels),
          }
    },
  },
  'under-warranty': {
    kind: 'note',
    confidence: 'firm',
    reads: ['history.partsUnderWarranty'],
    when: 'A part that this shop fitted is in warranty.',
    means: 'Covered parts are not charged.',
    offers: [],
    holds: [],
    find: (facts) => {
      const wheels = facts.evidence.history?.partsUnderWarranty ?? []
      return wheels.length === 0
        ? null
        : {
            wheels: inReadingOrder(wheels),
            because: () => [{ field: 'history.partsUnderWarranty', code: 'our-part-in-warranty' }],
            figures: () => figuresOf(facts, wheels),
          }
    },
  },
  'tire-old': {
    kind: 'note',
    confidence: 'firm',
    reads: ['wheels.*.tireAgeYears'],
    when: 'A tire is 6 years old or more by its date code; strongly advised from 10.',
    means: 'Several vehicle makers say 6 years, many tire makers 10 at most.',
    offers: [],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.wheels,
        (wheel) => (wheel.given.tireAgeYears ?? 0) >= thresholds.tireOldYears,
        (wheels) => {
          const oldest = Math.max(...wheels.map((wheel) => wheel.given.tireAgeYears ?? 0))
          return {
            because: () => groundsOf(wheels, 'tireAgeYears', () => ({ code: 'by-date-code' })),
            figures: () => ({
              ...wheelFigures(wheels),
              years: Math.floor(oldest),
              ...(oldest >= thresholds.tireVeryOldYears ? { form: 'very-old' } : {}),
            }),
          }
        },
      ),
  },
  'tread-low-soon': {
    kind: 'note',
    confidence: 'firm',
    reads: ['wheels.*.treadDepth32nds'],
    when: 'A tire has 4/32 in of tread or less, and more than 2/32.',
    means: 'It is due soon.',
    offers: ['tire'],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.wheels,
        ({ given }) =>
          typeof given.treadDepth32nds === 'number' &&
          given.treadDepth32nds <= thresholds.treadSoon32nds &&
          given.treadDepth32nds > thresholds.wornOut32nds,
        (wheels) => ({
          because: () => groundsOf(wheels, 'treadDepth32nds', () => ({ code: 'in-32nds' })),
          figures: () => ({
            ...wheelFigures(wheels),
            tread: Math.min(...wheels.map((wheel) => wheel.given.treadDepth32nds ?? 0)),
          }),
        }),
      ),
  },
  'nothing-found-today': {
    kind: 'note',
    confidence: 'possible',
    concludes: true,
    reads: [
      'light.*',
      'wheels.*.gauge',
      'wheels.*.answer',
      'wheels.*.id',
      'wheels.*.battery',
      'wheels.*.stem',
      'wheels.*.tireDamage',
      'controlModule.*',
    ],
    when: 'The light is not on, every check was made or noted as not possible, and nothing was found.',
    means: 'No cause found today; that is not the same as no fault.',
    offers: [],
    holds: [],
    find: (facts, prior) =>
      lightIsNotOn(facts) &&
      everythingChecked(facts) &&
      !prior.has('system-kind-contradicted') &&
      prior.codes().every((code) => !faultGroups.has(groupOf(code)) || harmless.has(code))
        ? {
            wheels: [],
            because: () => [{ field: 'light.behavior', code: 'light-off-all-checked' }],
          }
        : null,
  },
} satisfies Partial<RuleBook>

const comebackGroups: ReadonlySet<string> = new Set([
  'stop',
  'pressure',
  'system',
  'sensor',
  'identity',
  'vehicle',
])

const faultGroups: ReadonlySet<string> = new Set(['ask', ...comebackGroups, 'surroundings'])

/** Found, and no fault. */
const harmless: ReadonlySet<string> = new Set(['sensors-refer-to-sea-level', 'id-notation-differs'])

const lightIsNotOn = (facts: Facts): boolean =>
  facts.behavior === 'off' ||
  facts.behavior === 'intermittent-cold' ||
  facts.behavior === 'intermittent-other'

const figuresOf = (facts: Facts, wheels: readonly WheelPosition[]) =>
  wheelFigures(facts.wheels.filter((wheel) => wheels.includes(wheel.position)))
