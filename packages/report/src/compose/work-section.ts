import type { OrderState, WheelWork } from '@bayledger/ledger/state'
import { inReadingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { steps } from '@bayledger/wording/en/steps'
import { stepDoes } from '@bayledger/wording/steps'
import type { Block, Row, Section } from '../content.ts'
import { good, lastFour, orNotChecked, torque, words } from './figures.ts'

/** Part, lot, kit and torque of each wheel that was worked on, and what was written down by hand. */
export const workSection = (state: OrderState): Section => {
  const worked = inReadingOrder(Object.keys(state.work) as WheelPosition[])
    .map((wheel) => ({ wheel, work: state.work[wheel] }))
    .filter(({ work }) => work && (work.removed || work.part || work.fitted || work.leak || work.broken))
  const blocks: Block[] = [
    worked.length === 0
      ? { kind: 'paragraph', text: 'No wheel was taken off and no part was fitted.', entry: null }
      : {
          kind: 'table',
          caption: 'Parts and work, by wheel',
          columns: [
            { title: 'Wheel', share: 9 },
            { title: 'Part, lot, made', share: 25 },
            { title: 'New ID', share: 11 },
            { title: 'Service kit', share: 14 },
            { title: 'Stem torque', share: 13 },
            { title: 'Inside of tire', share: 14 },
            { title: 'Leak check', share: 14 },
          ],
          rows: worked.flatMap(({ wheel, work }) => (work ? [workRow(wheel, work)] : [])),
        },
    ...worked.flatMap(({ wheel, work }): Block[] =>
      work?.broken
        ? [
            {
              kind: 'paragraph',
              text: `The ${wheel} sensor was broken in our hands: ${work.broken.how}.`,
              entry: work.broken.written.seq,
            },
          ]
        : [],
    ),
    ...byHand(state),
  ]
  return { title: 'Work', blocks }
}

/** Values of steps that no column above has: core torque, the read in the open tire, where a leak was. */
const byHand = (state: OrderState): Block[] => {
  const rows = (state.plan?.plan.steps ?? []).flatMap((step): Row[] => {
    const closing = state.closed[step.stepKey]
    return closing && closing.value !== null
      ? [
          {
            entry: closing.written.seq,
            cells: [words(step.wheel ?? 'vehicle'), words(stepDoes(steps, step)), words(closing.value)],
          },
        ]
      : []
  })
  return rows.length === 0
    ? []
    : [
        {
          kind: 'table',
          caption: 'Written down by hand',
          columns: [
            { title: 'Wheel', share: 12 },
            { title: 'Step', share: 44 },
            { title: 'Recorded', share: 44 },
          ],
          rows,
        },
      ]
}

const workRow = (wheel: WheelPosition, work: WheelWork): Row => {
  const none = words('none fitted')
  const fitted = work.fitted
  return {
    entry: fitted?.written.seq ?? work.removed?.written.seq ?? null,
    cells: [
      words(wheel),
      work.part
        ? words(
            `${work.part.partNumber}, lot ${work.part.lot ?? 'not recorded'}, made ${work.part.madeMonth ?? 'not recorded'}`,
          )
        : none,
      fitted ? { kind: 'id', text: lastFour(fitted.sensorId) } : none,
      fitted ? words(fitted.kitPart) : none,
      fitted ? torque(fitted.torque) : none,
      orNotChecked(work.inside?.inside, (inside) =>
        inside === 'sound' ? good('sound') : words(inside.replaceAll('-', ' ')),
      ),
      orNotChecked(work.leak, (leak) =>
        leak.tight ? good('tight') : words(`leaks${leak.where ? ` at the ${leak.where}` : ''}`),
      ),
    ],
  }
}
