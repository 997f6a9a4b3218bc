import { proofOf, wheelsThatCameOff } from '@bayledger/ledger/questions/gates'
import type { OrderState } from '@bayledger/ledger/state'
import { retorqueWindow } from '@bayledger/reckoning/torque/retorque'
import { readingOrder } from '@bayledger/reckoning/wheels'
import { dayWords, number } from './figures.ts'
import { canDrive } from './verdicts.ts'

/** "Do this next": the re-torque first, then advice on pressures, then agreed dates. */
export const nextLines = (state: OrderState): string[] => [
  ...(canDrive(state).answer === 'do-not-drive'
    ? ['Call us before the car is moved; we tell you how it gets home or to us.']
    : []),
  ...retorque(state),
  ...proofDrive(state),
  ...warmTires(state),
  `Check all pressures once a ${canDrive(state).answer === 'check-weekly' ? 'week' : 'month'} with cold tires, against the door label.`,
  ...deferred(state),
]

/** The maker's own distance, as the specification sheet has it. */
const retorque = (state: OrderState): string[] => {
  const sheet = state.sheet?.sheet
  if (!sheet || wheelsThatCameOff(state).length === 0) return []
  const { from, to } = sheet.studs.retorqueMiles
  const odometer = state.handedBack?.odometer ?? state.drives.at(-1)?.odometerIn ?? state.opened?.odometer
  const window = odometer ? retorqueWindow(odometer, sheet.studs.retorqueMiles) : null
  const at = window
    ? `, at ${number(Math.round(window.from.value))} to ${number(Math.round(window.to.value))} ${window.to.unit}`
    : ''
  return [
    `In ${number(from)} to ${number(to)} miles${at}: come back for a free check of the wheel torque, no appointment.`,
  ]
}

const proofDrive = (state: OrderState): string[] =>
  proofOf(state).verdict === 'not-yet-proven'
    ? ['Tell us what the warning light does on the next 20 minutes of driving.']
    : []

/** Tires set while warmer than the outdoors read above their label until they are cold. */
const warmTires = (state: OrderState): string[] => {
  const over = Math.max(
    0,
    ...readingOrder.map((wheel) => {
      const target = state.work[wheel]?.pressure?.target
      return target ? target.psi - target.placardPsi : 0
    }),
  )
  if (over < 0.5) return []
  return [
    `The tires may read up to ${number(Math.ceil(over * 10) / 10, 'psi')} psi over the label while warm. That is on purpose; do not let air out.`,
  ]
}

const deferred = (state: OrderState): string[] => {
  const days = Object.values(state.answers)
    .filter(({ answer }) => answer === 'deferred')
    .flatMap(({ deferredUntil }) => (deferredUntil ? [deferredUntil] : []))
    .sort()
  return days[0] ? [`What you answered with Later comes up again on ${dayWords(days[0])}.`] : []
}
