import type { ProvenSecondPerson } from '../../src/admit/facts.ts'
import type { Appended } from '../../src/append.ts'
import { provenBy } from '../../src/ledger-pen.ts'
import { namedOnly } from '../../src/second-person.ts'
import { idOf } from '../seeded-ids.ts'
import { advisor, agreedBy, colleague, lead, technician, wrench } from '../shop.ts'
import { bay, before, closeStep, lastOf, type Refusals, strikeOf } from './setting.ts'

export const torqueRefusals: Refusals<
  | 'TORQUE_DIFFERS_FROM_SHEET'
  | 'TORQUE_ROUND_INCOMPLETE'
  | 'WRENCH_OVERDUE'
  | 'WRENCH_OUT_OF_RANGE'
  | 'WRENCH_UNKNOWN'
  | 'SECOND_PERSON_IS_DOER'
  | 'SECOND_PERSON_UNKNOWN'
  | 'SECOND_PERSON_ROLE_NOT_ALLOWED'
  | 'SECOND_PERSON_UNPROVEN'
  | 'SOLE_WORKER_TOO_SOON'
> = {
  TORQUE_DIFFERS_FROM_SHEET: [
    [
      'the figure in another unit',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', {
          figure: { value: 100, unit: 'N·m' },
        }),
      { sheet: { value: 100, unit: 'lbf·ft' }, found: { value: 100, unit: 'N·m' } },
    ],
  ],
  TORQUE_ROUND_INCOMPLETE: [
    [
      'four of five clicked',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', { clicked: 4 }),
      { why: 'clicks', clicked: 4, total: 5 },
    ],
    [
      'a wheel with another count of nuts',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', {
          clicked: 4,
          total: 4,
        }),
      { why: 'count', fastener: 'nut', count: 5, found: 4 },
    ],
    [
      'a nut that moved and does not exist',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', { moved: [6] }),
      { why: 'moved', fastener: 'nut', total: 5 },
    ],
    [
      'a second check that left a nut out',
      () =>
        closeStep<'torque.checked'>(
          before('RR.studs.second-check'),
          'RR.studs.second-check',
          { clicked: 4 },
          { by: lead },
        ),
      { why: 'clicks', clicked: 4, total: 5 },
    ],
  ],
  WRENCH_OVERDUE: [
    [
      'a wrench past its due date',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', {
          wrench: { ...wrench, dueOn: '2026-01-09' },
        }),
      { why: 'day', wrench: 'W-07', dueOn: '2026-01-09' },
    ],
    [
      'a wrench past its clicks',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', {
          wrench: { ...wrench, cyclesBefore: 5_000 },
        }),
      { why: 'cycles', wrench: 'W-07', cycles: 5000, dueAt: 5000 },
    ],
  ],
  WRENCH_OUT_OF_RANGE: [
    [
      'a wrench too small for the figure',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', {
          wrench: { ...wrench, rangeLow: 10, rangeHigh: 80 },
        }),
      { wrench: 'W-07', found: { value: 100, unit: 'lbf·ft' }, low: 16, high: 80, unit: 'lbf·ft' },
    ],
    [
      'a wrench on whose scale half the figure is not',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-half'), 'RR.studs.torque-half', {
          wrench: { ...wrench, rangeLow: 60, rangeHigh: 300 },
        }),
      { wrench: 'W-07', found: { value: 50, unit: 'lbf·ft' }, low: 60, high: 300, unit: 'lbf·ft' },
    ],
  ],
  WRENCH_UNKNOWN: [
    [
      'a wrench that is not registered',
      () =>
        closeStep(
          before('RR.studs.torque-full'),
          'RR.studs.torque-full',
          {},
          { ...bay, facts: { wrenches: new Map() } },
        ),
      { wrench: 'W-07' },
    ],
  ],
  SECOND_PERSON_IS_DOER: [
    [
      'the doer checking the own torque',
      () => closeStep(before('RR.studs.second-check'), 'RR.studs.second-check'),
      { to: 'check-torque' },
    ],
    [
      'the doer checking it on another tablet',
      () =>
        closeStep(
          before('RR.studs.second-check'),
          'RR.studs.second-check',
          {},
          { by: technician, deviceId: idOf('device/other') },
        ),
      { to: 'check-torque' },
    ],
    [
      "a check with the doer's own PIN, written by somebody else",
      () =>
        closeStep<'torque.checked'>(
          before('RR.studs.second-check'),
          'RR.studs.second-check',
          { checkedBy: agreedBy(technician) },
          { by: lead },
        ),
      { to: 'check-torque' },
    ],
    [
      'a withdrawal confirmed by whoever writes it',
      () => {
        const pen = before('RR.tire.open')
        return pen.strike(lastOf(pen, 'wheel.removed'), technician, technician)
      },
      { to: 'agree' },
    ],
  ],
  SOLE_WORKER_TOO_SOON: [
    [
      'a sole worker checking a wheel twenty seconds after torquing it',
      () =>
        closeStep(
          before('RR.studs.second-check'),
          'RR.studs.second-check',
          {},
          { ...bay, facts: { staff: new Map([[technician.id, ['owner', 'technician']]]) } },
        ),
      { minutes: 5 },
    ],
  ],
  SECOND_PERSON_UNKNOWN: [
    [
      'a withdrawal confirmed by a stranger',
      () => {
        const pen = before('RR.tire.open')
        return pen.strike(lastOf(pen, 'wheel.removed'), technician, { id: idOf('stranger'), roles: [] })
      },
    ],
  ],
  SECOND_PERSON_ROLE_NOT_ALLOWED: [
    [
      "a torque check with an advisor's PIN",
      () =>
        closeStep<'torque.checked'>(before('RR.studs.second-check'), 'RR.studs.second-check', {
          checkedBy: agreedBy(advisor),
        }),
      { roles: ['technician', 'lead'] },
    ],
    [
      'a withdrawal confirmed by an advisor',
      () => {
        const pen = before('RR.tire.open')
        return pen.strike(lastOf(pen, 'wheel.removed'), technician, advisor)
      },
      { roles: ['technician', 'lead', 'manager', 'owner'] },
    ],
  ],
  SECOND_PERSON_UNPROVEN: [
    [
      'a torque check that nobody sealed with a PIN',
      () =>
        closeStep<'torque.checked'>(
          before('RR.studs.second-check'),
          'RR.studs.second-check',
          { checkedBy: null },
          { by: lead },
        ),
    ],
    [
      'a torque check by whoever is signed in, without their PIN',
      () =>
        closeStep<'torque.checked'>(
          before('RR.studs.second-check'),
          'RR.studs.second-check',
          { checkedBy: namedOnly(lead.id) },
          { by: lead },
        ),
    ],
    [
      'a torque check sealed with the PIN that was typed for another entry',
      () => {
        const pen = before('RR.studs.second-check')
        const other = provenBy(
          pen.draft(
            'entry.struck',
            strikeOf(lastOf(pen, 'wheel.removed'), { secondPerson: agreedBy(lead) }),
            bay,
          ),
        )
        const id = idOf('entry/check')
        const [proven] = other.values()
        if (!proven) throw new RangeError('the withdrawal names nobody')
        return closeStep(
          pen,
          'RR.studs.second-check',
          {},
          { by: lead, id, facts: { secondPersons: new Map([[id, proven]]) } },
        )
      },
    ],
    ['a withdrawal in the name of somebody who proved nothing', () => strikeWith(() => new Map())],
    [
      'a withdrawal that carries no proof at all',
      () => {
        const pen = before('RR.tire.open')
        const payload = strikeOf(lastOf(pen, 'wheel.removed'), { secondPerson: namedOnly(lead.id) })
        return pen.attempt('entry.struck', payload, bay)
      },
    ],
    ['a proof of another person', () => strikeWith((proven) => ({ ...proven, staffId: colleague.id }))],
    ['a proof for another order', () => strikeWith((proven) => ({ ...proven, orderId: idOf('other') }))],
    ['a proof of other content', () => strikeWith((proven) => ({ ...proven, digest: '0'.repeat(64) }))],
    [
      'a proof for another kind of entry',
      () => strikeWith((proven) => ({ ...proven, kind: 'order.handed_back' })),
    ],
    [
      'a proof that has run out',
      () => strikeWith((proven) => ({ ...proven, until: '2026-01-12T14:59:59.999Z' })),
    ],
  ],
}

/** The withdrawal of a wheel that came off, agreed to by the lead, with what the server knows of it changed. */
const strikeWith = (
  change: (proven: ProvenSecondPerson) => ProvenSecondPerson | ReadonlyMap<string, ProvenSecondPerson>,
): Appended => {
  const pen = before('RR.tire.open')
  const id = idOf('entry/strike')
  const payload = strikeOf(lastOf(pen, 'wheel.removed'), { secondPerson: agreedBy(lead) })
  const [proven] = provenBy(pen.draft('entry.struck', payload, { ...bay, id })).values()
  if (!proven) throw new RangeError('the withdrawal names nobody')
  const changed = change(proven)
  const secondPersons = changed instanceof Map ? changed : new Map([[id, changed as ProvenSecondPerson]])
  return pen.attempt('entry.struck', payload, { ...bay, id, facts: { secondPersons } })
}
