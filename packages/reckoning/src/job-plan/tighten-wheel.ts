import type { SpecificationSheet } from '../sheet.ts'
import { tighteningOrder } from '../torque/star-sequence.ts'
import type { RoadPosition, WheelPosition } from '../wheels.ts'
import { liftKeys, torqueCheckKey, torqueRoundKey, wheelOnKey } from './step-keys.ts'
import { roundFigure, type StepDraft, studTorque } from './step-of.ts'

/** Which wheel goes on: the one that came off here, one from another place, or one of the other season's set. */
export type WheelToFit =
  | { readonly kind: 'own' }
  | { readonly kind: 'from'; readonly place: WheelPosition }
  | { readonly kind: 'other-set' }
  /** The sound spare, in place of a wheel that must not be used. */
  | { readonly kind: 'spare' }

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
): StepDraft[] => {
  const { fastener, handTurns } = sheet.studs
  const order = [...tighteningOrder(sheet.studs)]
  const torque = torqueOf(sheet, wheel)
  const [half, full, again] = [
    torqueRoundKey(wheel, 'half'),
    torqueRoundKey(wheel, 'full'),
    torqueRoundKey(wheel, 'again'),
  ] as const
  return [
    {
      stepKey: wheelOnKey(wheel),
      code: 'put-wheel-on',
      values: { which: whichWheel[fit.kind], fastener, handTurns, order },
      wheel,
      closedBy: 'wheel.mounted',
      needs: ['value'],
      waitsFor: after,
      ...(fit.kind === 'from' ? { comesFrom: fit.place } : {}),
      ...(fit.kind === 'spare' ? { comesFrom: 'SP' as const, cautions: ['spare' as const] } : {}),
    },
    {
      ...torque,
      stepKey: half,
      code: 'torque-studs',
      values: { fastener, order },
      figure: roundFigure(sheet, 'half'),
      round: 'half',
      closedBy: 'studs.torqued',
      needs: ['value'],
      waitsFor: [wheelOnKey(wheel), liftKeys.touching],
    },
    {
      ...torque,
      stepKey: full,
      code: 'torque-studs',
      values: { fastener, order },
      round: 'full',
      closedBy: 'studs.torqued',
      needs: ['value'],
      waitsFor: [half],
    },
    {
      ...torque,
      stepKey: again,
      code: 'torque-studs',
      values: { fastener, order },
      round: 'again',
      closedBy: 'studs.torqued',
      needs: ['value'],
      waitsFor: [full],
    },
    {
      ...torque,
      stepKey: torqueCheckKey(wheel),
      code: 'check-torque',
      values: { fastener, order },
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
export const torqueAgain = (sheet: SpecificationSheet, wheel: RoadPosition): StepDraft => ({
  ...torqueOf(sheet, wheel),
  stepKey: torqueRoundKey(wheel, 'again'),
  code: 'torque-after-miles',
  values: { fastener: sheet.studs.fastener, order: [...tighteningOrder(sheet.studs)] },
  round: 'again',
  closedBy: 'studs.torqued',
  needs: ['value'],
  cautions: ['torqueAgain'],
})

const torqueOf = (sheet: SpecificationSheet, wheel: RoadPosition) =>
  ({ wheel, figure: studTorque(sheet), rests: 'studTorque', cautions: ['torque'] }) as const

const whichWheel = {
  own: 'own',
  from: 'from-another-place',
  spare: 'from-another-place',
  'other-set': 'other-set',
} as const
