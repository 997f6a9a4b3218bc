import { idOf } from '../seeded-ids.ts'
import { lead, technician, wrench } from '../shop.ts'
import { bay, before, closeStep, lastOf, type Refusals } from './setting.ts'

export const torqueRefusals: Refusals<
  | 'TORQUE_DIFFERS_FROM_SHEET'
  | 'TORQUE_ROUND_INCOMPLETE'
  | 'WRENCH_OVERDUE'
  | 'WRENCH_OUT_OF_RANGE'
  | 'WRENCH_UNKNOWN'
  | 'SECOND_PERSON_IS_DOER'
  | 'SECOND_PERSON_UNKNOWN'
> = {
  TORQUE_DIFFERS_FROM_SHEET: [
    [
      'the figure in another unit',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', {
          figure: { value: 100, unit: 'N·m' },
        }),
    ],
  ],
  TORQUE_ROUND_INCOMPLETE: [
    [
      'four of five clicked',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', { clicked: 4 }),
    ],
    [
      'a wheel with another count of nuts',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', {
          clicked: 4,
          total: 4,
        }),
    ],
    [
      'a nut that moved and does not exist',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', { moved: [6] }),
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
    ],
  ],
  WRENCH_OVERDUE: [
    [
      'a wrench past its due date',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', {
          wrench: { ...wrench, dueOn: '2026-01-09' },
        }),
    ],
    [
      'a wrench past its clicks',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', {
          wrench: { ...wrench, cyclesBefore: 5_000 },
        }),
    ],
  ],
  WRENCH_OUT_OF_RANGE: [
    [
      'a wrench too small for the figure',
      () =>
        closeStep<'studs.torqued'>(before('RR.studs.torque-full'), 'RR.studs.torque-full', {
          wrench: { ...wrench, rangeLow: 10, rangeHigh: 80 },
        }),
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
    ],
  ],
  SECOND_PERSON_IS_DOER: [
    [
      'the doer checking the own torque',
      () => closeStep(before('RR.studs.second-check'), 'RR.studs.second-check'),
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
    ],
    [
      'a withdrawal confirmed by whoever writes it',
      () => {
        const pen = before('RR.tire.open')
        return pen.strike(lastOf(pen, 'wheel.removed'), technician, technician)
      },
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
}
