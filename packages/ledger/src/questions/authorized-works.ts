import type { AuthorizedWork } from '@bayledger/reckoning/job-plan/authorized-work'
import type { OpenedTires } from '@bayledger/reckoning/money/offer'
import { inReadingOrder, readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'
import { authorizedBundles } from './answers.ts'
import { holesAt, isRuledOut } from './puncture.ts'
import { repairNotOffered } from './repair-refused.ts'
import { spareWheel } from './spare-on.ts'

/**
 * What the customer has authorized, as the job plan is made of it, and the spare on which the vehicle leaves. Holes that
 * may not be closed are in no plan.
 */
export const authorizedWorks = (state: OrderState): AuthorizedWork[] => {
  const wheel = spareWheel(state)
  return [
    ...soldWorks(state),
    ...(wheel === null ? [] : [{ work: { kind: 'fit-spare', wheel } as const, bundleKey: null }]),
  ]
}

const soldWorks = (state: OrderState): AuthorizedWork[] =>
  authorizedBundles(state).flatMap(({ bundleKey, works }) =>
    works.filter((work) => !isRuledOut(state, work)).map((work) => ({ work, bundleKey })),
  )

/** Wheels whose tire the plan in force opens, or has opened and not yet put back on. */
export const tiresOpenedAnyway = ({ plan, work }: OrderState): WheelPosition[] =>
  inReadingOrder(
    (plan?.plan.steps ?? []).flatMap(({ opensTire, wheel }) =>
      opensTire && wheel !== null && !work[wheel]?.mounted ? [wheel] : [],
    ),
  )

/** Whether the plan in force still has the repair of holes that have turned out to be beyond repair. */
export const plansRuledOutRepair = (state: OrderState): boolean =>
  (state.plan?.plan.steps ?? []).some(
    ({ code, wheel }) =>
      code === 'repair-leak' && wheel !== null && isRuledOut(state, { kind: 'repair-puncture', wheel }),
  )

/** What became of tires since they were opened, as far as the next version of the estimate depends on it. */
export const openedTires = (state: OrderState): OpenedTires => ({
  searched: authorizedBundles(state)
    .filter(({ title }) => title === 'leak-search')
    .flatMap(({ works, findings }) =>
      works.flatMap((work) => (work.kind === 'find-leak' ? [{ wheel: work.wheel, findings }] : [])),
    ),
  repairable: readingOrder
    .filter((wheel) => repairNotOffered(state, wheel) === null)
    .map((wheel) => ({ wheel, holes: holesAt(state, wheel)?.length ?? 0 })),
})
