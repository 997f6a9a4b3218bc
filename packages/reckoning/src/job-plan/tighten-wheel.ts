import type { SpecificationSheet } from '../sheet.ts'
import { tighteningOrder } from '../torque/star-sequence.ts'
import { type RoadPosition, type WheelPosition, wheelNames } from '../wheels.ts'
import { torqueCheckKey, torqueRoundKey } from './step-keys.ts'
import { type StepWords, studTorque } from './step-of.ts'

/** Which wheel goes on: the one that came off here, one from another place, or one of the other season's set. */
export type WheelToFit =
  | { readonly kind: 'own' }
  | { readonly kind: 'from'; readonly place: WheelPosition }
  | { readonly kind: 'other-set' }

/**
 * The wheel goes on and is tightened: by hand, then half the figure, the figure, and the figure again until none
 * moves; then a second person goes round.
 *
 * @units The figure as the maker prints it.
 * @limits The figure and a published sequence are the vehicle maker's and govern.
 * @source Rounds and star: common practice, no source.
 */
export const tightenWheel = (
  sheet: SpecificationSheet,
  wheel: RoadPosition,
  after: readonly string[],
  fit: WheelToFit,
): StepWords[] => {
  const { fastener, handTurns } = sheet.studs
  const order = tighteningOrder(sheet.studs).join(' · ')
  const torque = torqueOf(sheet, wheel)
  const [half, full, again] = [
    torqueRoundKey(wheel, 'half'),
    torqueRoundKey(wheel, 'full'),
    torqueRoundKey(wheel, 'again'),
  ] as const
  return [
    {
      stepKey: `${wheel}.wheel.on`,
      code: 'put-wheel-on',
      wheel,
      does: `Wheel on, every ${fastener} by hand`,
      how: `${whichWheel(fit, wheel)}Hub face and seats clean, the right seat, dry threads. At least ${handTurns} turns by hand each; any resistance: stop. Snug in the order ${order} with the wheel still off the ground.`,
      closedBy: 'wheel.mounted',
      needs: ['value'],
      waitsFor: after,
      ...(fit.kind === 'from' ? { comesFrom: fit.place } : {}),
    },
    {
      ...torque,
      stepKey: half,
      code: 'torque-studs',
      round: 'half',
      does: 'Round at half the figure',
      how: `Lower until the tire just holds. About half of the figure shown, in the order ${order}.`,
      closedBy: 'studs.torqued',
      needs: ['value'],
      waitsFor: [`${wheel}.wheel.on`],
    },
    {
      ...torque,
      stepKey: full,
      code: 'torque-studs',
      round: 'full',
      does: 'Round at the figure',
      how: `Pull smoothly, one click, stop. In the order ${order}. The locking ${fastener} gets the same figure with its key.`,
      closedBy: 'studs.torqued',
      needs: ['value'],
      waitsFor: [half],
    },
    {
      ...torque,
      stepKey: again,
      code: 'torque-studs',
      round: 'again',
      does: 'Once more round at the figure',
      how: `Every ${fastener} clicks without turning. One that turns sends the wheel back to the round before.`,
      closedBy: 'studs.torqued',
      needs: ['value'],
      waitsFor: [full],
    },
    {
      ...torque,
      stepKey: torqueCheckKey(wheel),
      code: 'check-torque',
      does: 'Second person checks the torque',
      how: `Somebody else, with a wrench in calibration, goes round at the figure in the order ${order}.`,
      closedBy: 'torque.checked',
      needs: ['value', 'second-person'],
      waitsFor: [again],
    },
  ]
}

/**
 * The look at the torque of a wheel that was off some miles ago: one round at the vehicle maker's figure, and round
 * again until none moves.
 *
 * @limits The vehicle maker's figure governs; cold wheels.
 * @source Common practice, no source.
 */
export const torqueAgain = (sheet: SpecificationSheet, wheel: RoadPosition): StepWords => ({
  ...torqueOf(sheet, wheel),
  stepKey: torqueRoundKey(wheel, 'again'),
  code: 'torque-after-miles',
  round: 'again',
  does: 'Check the torque after the miles',
  how: `In the order ${tighteningOrder(sheet.studs).join(' · ')}. Record which ${sheet.studs.fastener}s moved; if one did, go round again until none does, and tell the desk.`,
  closedBy: 'studs.torqued',
  needs: ['value'],
  caution: 'torqueAgain',
})

const torqueOf = (sheet: SpecificationSheet, wheel: RoadPosition) =>
  ({ wheel, figure: studTorque(sheet), rests: 'studTorque', caution: 'torque' }) as const

const whichWheel = (fit: WheelToFit, at: RoadPosition): string => {
  switch (fit.kind) {
    case 'own':
      return ''
    case 'from':
      return `The wheel marked ${fit.place}${fit.place === 'SP' ? ', the spare,' : `, from the ${wheelNames[fit.place]},`} goes on here. `
    case 'other-set':
      return `The other set's wheel for ${at} goes on; fasteners and seats must be right for it. `
  }
}
