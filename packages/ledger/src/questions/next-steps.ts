import type { Distance } from '@bayledger/reckoning/quantity'
import type { RetorqueMiles } from '@bayledger/reckoning/torque/retorque'
import { retorqueWindow } from '@bayledger/reckoning/torque/retorque'
import { readingOrder } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'
import { proofOf, wheelsThatCameOff } from './gates.ts'
import { mayDrive } from './verdicts.ts'

/** One thing for the customer to do after the visit: a code and its figures. */
export type NextStep =
  | { readonly code: 'call-before-moving' }
  /** `miles`: the vehicle maker's distance. `at`: as odometer readings, unrounded; `null` where no odometer was read. */
  | {
      readonly code: 'retorque'
      readonly miles: RetorqueMiles
      readonly at: { readonly from: Distance; readonly to: Distance } | null
    }
  | { readonly code: 'report-the-light' }
  /** `overPsi`: the most that a tire was set over its label, psi, unrounded. */
  | { readonly code: 'warm-tires'; readonly overPsi: number }
  | { readonly code: 'check-pressures'; readonly every: 'week' | 'month' }
  /** `day`: the first day that the customer agreed to, YYYY-MM-DD. */
  | { readonly code: 'deferred-work'; readonly day: string }

/**
 * "What is next?", for the customer who takes the vehicle, in the order in which it is read: what concerns safety first,
 * then the advice on pressures, then the agreed day.
 */
export const nextSteps = (state: OrderState): readonly NextStep[] => {
  const drive = mayDrive(state)
  return [
    ...(drive === 'do-not-drive' ? [{ code: 'call-before-moving' } as const] : []),
    ...retorque(state),
    ...(proofOf(state).verdict === 'not-yet-proven' ? [{ code: 'report-the-light' } as const] : []),
    ...warmTires(state),
    { code: 'check-pressures', every: drive === 'check-weekly' ? 'week' : 'month' },
    ...deferredWork(state),
  ]
}

/** The maker's own distance, as the specification sheet has it. */
const retorque = (state: OrderState): readonly NextStep[] => {
  const sheet = state.sheet?.sheet
  if (!sheet || wheelsThatCameOff(state).length === 0) return []
  const miles = sheet.studs.retorqueMiles
  const odometer = state.handedBack?.odometer ?? state.drives.at(-1)?.odometerIn ?? state.opened?.odometer
  return [{ code: 'retorque', miles, at: odometer ? retorqueWindow(odometer, miles) : null }]
}

/** Under half a psi no gauge of a customer shows it. */
const worthSayingPsi = 0.5

/** Tires set while warmer than the outdoors read above their label until they are cold. */
const warmTires = (state: OrderState): readonly NextStep[] => {
  const overPsi = Math.max(
    0,
    ...readingOrder.map((wheel) => {
      const target = state.work[wheel]?.pressure?.target
      return target ? target.psi - target.placardPsi : 0
    }),
  )
  return overPsi < worthSayingPsi ? [] : [{ code: 'warm-tires', overPsi }]
}

const deferredWork = (state: OrderState): readonly NextStep[] => {
  const [day] = Object.values(state.answers)
    .filter(({ answer }) => answer === 'deferred')
    .flatMap(({ deferredUntil }) => (deferredUntil ? [deferredUntil] : []))
    .sort()
  return day ? [{ code: 'deferred-work', day }] : []
}
