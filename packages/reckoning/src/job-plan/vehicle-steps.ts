import { relearnNotOnSheet, relearnWords } from '../relearn/relearn-words.ts'
import type { Moves } from '../rotation/moves.ts'
import type { SafetyFigure, SpecificationSheet } from '../sheet.ts'
import type { StepCode } from '../step.ts'
import { torqueDoubts, torqueWords } from '../torque/plausible-torque.ts'
import { roadPositions, type WheelPosition } from '../wheels.ts'
import { movedIdWords } from './other-wheels.ts'
import { confirmationKey, placardFigure, type StepWords } from './step-of.ts'

const figureWords = {
  placard: 'door label pressures',
  studTorque: 'wheel torque',
  frequency: 'sensor frequency',
} as const satisfies Record<SafetyFigure, string>

const confirmationCodes = {
  placard: 'confirm-placard',
  studTorque: 'confirm-stud-torque',
  frequency: 'confirm-frequency',
} as const satisfies Record<SafetyFigure, StepCode>

/**
 * A figure that nobody has verified is confirmed from its source by a second person before a step may use it.
 *
 * @limits The vehicle maker's figure governs; a figure inside the usual band is not verified by that.
 * @source This program's own rule.
 */
export const confirmFigure = (sheet: SpecificationSheet, figure: SafetyFigure): StepWords => ({
  stepKey: confirmationKey(figure),
  code: confirmationCodes[figure],
  does: `Confirm the ${figureWords[figure]}`,
  how: [
    "A second person reads the figure in the maker's own source and names the page. The maker's figure governs.",
    ...(figure === 'studTorque' ? typedTorque(sheet) : []),
  ].join(' '),
  closedBy: 'figure.confirmed',
  needs: ['value', 'second-person'],
})

const typedTorque = ({ studs }: SpecificationSheet): string[] => [
  `The sheet has ${torqueWords(studs.torque)} for ${studs.thread}.`,
  ...torqueDoubts(studs.thread, studs.torque),
]

/**
 * The wheels whose pressure the placard names.
 *
 * @source The sheet.
 */
export const placardWheels = (sheet: SpecificationSheet): WheelPosition[] =>
  sheet.spare !== 'none' && sheet.placard.spare ? [...roadPositions, 'SP'] : [...roadPositions]

/**
 * The step by which a wheel's pressure is set.
 *
 * @source This program's own rule.
 */
export const pressureKey = (wheel: WheelPosition): string => `${wheel}.pressure.set`

/**
 * Set every tire to the day's target: the label's cold figure, carried to the tire's own temperature.
 *
 * @limits The vehicle maker's label governs.
 * @source Common practice, no source; the target itself, see `setTarget`.
 */
export const setPressures = (
  sheet: SpecificationSheet,
  after: (wheel: WheelPosition) => readonly string[],
): StepWords[] =>
  placardWheels(sheet).map((wheel) => ({
    stepKey: pressureKey(wheel),
    code: 'set-pressure',
    wheel,
    does: 'Set the pressure',
    how: "To the target shown, which carries the label's cold figure to this tire's temperature. Then gauge it.",
    closedBy: 'pressure.set',
    figure: placardFigure(sheet, wheel),
    needs: ['value'],
    waitsFor: after(wheel),
    rests: 'placard',
    caution: 'pressure',
  }))

export const relearnKey = 'vehicle.relearn.done'

const relearnTitles = {
  automatic: 'Let the vehicle learn its sensors',
  stationary: 'Make the vehicle learn its sensors',
  connector: 'Send the sensor IDs to the vehicle',
  reset: 'Tell the vehicle its tires are right',
} as const

/**
 * The relearn or reset that the sheet describes, once the pressures are right and, if it is driven, the wheels safe.
 *
 * @limits The vehicle maker's procedure governs; where the sheet has none, none is guessed.
 * @source Common practice, no source; the procedure: the sheet.
 */
export const relearnStep = (
  sheet: SpecificationSheet,
  pressures: readonly string[],
  checks: readonly string[],
): StepWords[] => {
  const relearn = sheet.relearn
  if (!relearn)
    return [
      {
        stepKey: relearnKey,
        code: 'relearn',
        does: relearnTitles[sheet.system === 'indirect' ? 'reset' : 'stationary'],
        how: relearnNotOnSheet,
        closedBy: 'relearn.done',
        needs: ['value'],
        // It may turn out to be a drive.
        waitsFor: [...pressures, ...checks],
      },
    ]
  const isDriven = relearn.method === 'automatic'
  return [
    {
      stepKey: relearnKey,
      code: 'relearn',
      does: relearnTitles[relearn.method],
      how: relearnWords(relearn, sheet),
      closedBy: 'relearn.done',
      figure: relearn.driveMinutes
        ? { kind: 'count', count: relearn.driveMinutes, unit: 'min driven', source: sheet.name }
        : relearn.timeLimitMinutes
          ? { kind: 'count', count: relearn.timeLimitMinutes, unit: 'min limit', source: sheet.name }
          : null,
      needs: ['value'],
      waitsFor: [...pressures, ...(isDriven ? checks : [])],
      ...(isDriven ? { caution: 'road' } : {}),
    },
  ]
}

/** Minutes of driving in which a warning would come: 49 CFR 571.138 S4.2 and S4.4 allow the system 20. */
const proofMinutes = 20

/**
 * The closing check and the proof that the light is out and stays out; `moves`: wheels that changed places.
 *
 * @units Minutes: the 20 that a system may take to warn; mph: the band in which they count.
 * @source 49 CFR 571.138 S4.2 and S4.4, from memory. The steps: common practice, no source.
 */
export const proveIt = (
  sheet: SpecificationSheet,
  after: readonly string[],
  checks: readonly string[],
  moves: Moves,
): StepWords[] => {
  const heard: readonly WheelPosition[] =
    sheet.system !== 'direct' ? [] : sheet.spareMonitored ? [...roadPositions, 'SP'] : roadPositions
  const read = heard.map((wheel) => `${wheel}.closing.read`)
  return [
    ...heard.map(
      (wheel): StepWords => ({
        stepKey: `${wheel}.closing.read`,
        code: 'read-sensor',
        wheel,
        does: 'Read the sensor again',
        how: 'As left: it answers, and its pressure agrees with the gauge within 2 psi.',
        closedBy: 'wheel.checked',
        needs: ['value'],
        waitsFor: after,
      }),
    ),
    ...(sheet.system === 'direct'
      ? [
          {
            stepKey: 'vehicle.closing.module',
            code: 'compare-stored',
            does: 'Compare what the vehicle stored',
            how: [
              'Every stored ID stands at its own wheel.',
              movedIdWords(moves),
              'Record the codes as they are now.',
            ]
              .filter((sentence) => sentence !== '')
              .join(' '),
            closedBy: 'module.read',
            needs: ['value'],
            waitsFor: after,
          } as const,
        ]
      : []),
    {
      stepKey: 'vehicle.proof.drive',
      code: 'proof-drive',
      does: 'Proof drive',
      how: 'Between 30 and 60 mph, with no long stops. Record minutes and odometer; key off, key on, watch the lamp.',
      closedBy: 'drive.done',
      figure: { kind: 'count', count: proofMinutes, unit: 'min', source: '49 CFR 571.138 S4.2' },
      needs: ['value'],
      waitsFor: [...after, ...read, ...checks],
      caution: 'road',
    },
    {
      stepKey: 'vehicle.closing.light',
      code: 'see-light',
      does: 'See the light come on and go out',
      how: 'Key off, key on: the warning light comes on for the lamp check and goes out.',
      closedBy: 'telltale.observed',
      needs: ['value'],
      waitsFor: ['vehicle.proof.drive'],
    },
    lastLook(['vehicle.closing.light']),
  ]
}

/**
 * What may lie under a vehicle, or be left in it, is looked for once more before it goes.
 *
 * @source Common practice, no source.
 */
export const lastLook = (after: readonly string[]): StepWords => ({
  stepKey: 'vehicle.last.look',
  code: 'last-look',
  does: 'Last look around the vehicle',
  how: 'Caps on, nothing under the vehicle, locking key back in its place, spare stowed, hand tools counted.',
  closedBy: 'step.closed',
  waitsFor: after,
})
