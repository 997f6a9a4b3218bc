import { isMissing, type SpecificationSheet, studsOf } from '../sheet.ts'
import { tighteningOrder } from '../torque/star-sequence.ts'
import type { RoadPosition, WheelPosition } from '../wheels.ts'
import { liftKeys, torqueCheckKey, torqueRoundKey, wheelOnKey } from './step-keys.ts'
import { type StepDraft, studTorque, torqueFigure } from './step-of.ts'

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
      values: fittedAs(sheet, whichWheel[fit.kind]),
      wheel,
      closedBy: 'wheel.mounted',
      needs: ['value'],
      waitsFor: after,
      // How many turns by hand and which fastener it is: nothing is put on by guess.
      ...(isMissing(sheet, 'studTorque') ? { rests: 'studTorque' as const } : {}),
      ...(fit.kind === 'from' ? { comesFrom: fit.place } : {}),
      ...(fit.kind === 'spare' ? { comesFrom: 'SP' as const, cautions: ['spare' as const] } : {}),
    },
    {
      ...torque,
      stepKey: half,
      code: 'torque-studs',
      values: fastening(sheet),
      figure: torqueFigure(sheet, 'half'),
      round: 'half',
      closedBy: 'studs.torqued',
      needs: ['value'],
      waitsFor: [wheelOnKey(wheel), liftKeys.touching],
    },
    {
      ...torque,
      stepKey: full,
      code: 'torque-studs',
      values: fastening(sheet),
      round: 'full',
      closedBy: 'studs.torqued',
      needs: ['value'],
      waitsFor: [half],
    },
    {
      ...torque,
      stepKey: again,
      code: 'torque-studs',
      values: fastening(sheet),
      round: 'again',
      closedBy: 'studs.torqued',
      needs: ['value'],
      waitsFor: [full],
    },
    {
      ...torque,
      stepKey: torqueCheckKey(wheel),
      code: 'check-torque',
      values: fastening(sheet),
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
  values: fastening(sheet),
  round: 'again',
  closedBy: 'studs.torqued',
  needs: ['value'],
  cautions: ['torqueAgain'],
})

const torqueOf = (sheet: SpecificationSheet, wheel: RoadPosition) =>
  ({ wheel, figure: studTorque(sheet), rests: 'studTorque', cautions: ['torque'] }) as const

/** The fasteners and their order; a step of a wheel without them stays shut until somebody enters them. */
const fastening = (sheet: SpecificationSheet) => {
  const studs = studsOf(sheet)
  return studs
    ? { fastener: studs.fastener, order: [...tighteningOrder(studs)] }
    : { fastener: 'missing' as const }
}

const fittedAs = (sheet: SpecificationSheet, which: (typeof whichWheel)[WheelToFit['kind']]) => {
  const studs = studsOf(sheet)
  return studs
    ? {
        which,
        fastener: studs.fastener,
        handTurns: studs.handTurns,
        order: [...tighteningOrder(studs)],
      }
    : { which, fastener: 'missing' as const }
}

const whichWheel = {
  own: 'own',
  from: 'from-another-place',
  spare: 'from-another-place',
  'other-set': 'other-set',
} as const
