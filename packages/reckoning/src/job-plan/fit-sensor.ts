import type { SpecificationSheet } from '../sheet.ts'
import type { StepFigure } from '../step.ts'
import { stemTorqueDoubts } from '../torque/plausible-torque.ts'
import { axleOf, type WheelPosition } from '../wheels.ts'
import { frequencyFigure, type StepWords } from './step-of.ts'

export type Valve = 'snap-in' | 'clamp-in' | 'plain'

/**
 * A new sensor: matched and programmed before the wheel comes off, fitted in the open tire.
 *
 * @units Torque as the sensor maker's sheet prints it; MHz.
 * @limits The sensor maker's figures govern. Rubber stems above 65 psi cold are doubted.
 * @source Common practice, no source; the figures: the sheet.
 */
export const fitSensor = (
  sheet: SpecificationSheet,
  wheel: WheelPosition,
  valve: 'snap-in' | 'clamp-in',
  identity: 'copy' | 'new',
): { readonly before: StepWords[]; readonly inside: StepWords[] } => {
  const figure = frequencyFigure(sheet)
  return {
    before: [
      {
        stepKey: `${wheel}.sensor.match`,
        code: 'match-sensor',
        wheel,
        does: 'Draw the sensor, match it by scan',
        how: `Frequency and stem must be the sheet's: ${sheet.sensor?.frequencyMHz ?? 'not on the sheet'} MHz, ${valve}. "Something close" does not fit.`,
        closedBy: 'part.drawn',
        figure,
        needs: ['value'],
        rests: 'frequency',
      },
      {
        stepKey: `${wheel}.sensor.program`,
        code: 'program-sensor',
        wheel,
        does: identity === 'copy' ? "Program with the old sensor's ID" : 'Program with a new ID',
        how: 'Before it is mounted, five feet or more from every other sensor. Then read it back in your hand.',
        closedBy: 'sensor.programmed',
        figure,
        needs: ['value'],
        waitsFor: [`${wheel}.sensor.match`],
        rests: 'frequency',
      },
    ],
    inside: [
      {
        stepKey: `${wheel}.sensor.fit`,
        code: 'fit-sensor',
        wheel,
        does: 'Old sensor out, new one in',
        how: [fittingWords[valve], ...stemDoubts(sheet, wheel, valve)].join(' '),
        closedBy: 'sensor.fitted',
        figure: stemFigure(sheet, valve),
        needs: ['value', 'photo'],
        waitsFor: [`${wheel}.sensor.program`, `${wheel}.tire.inside`],
        caution: 'stem',
      },
    ],
  }
}

/**
 * A new plain stem, or the stem parts of a sensor that stays.
 *
 * @units Torque as the sensor maker's sheet prints it.
 * @limits The sensor maker's figures govern. Rubber stems above 65 psi cold are doubted.
 * @source Common practice, no source; the figures: the sheet.
 */
export const serviceStem = (sheet: SpecificationSheet, wheel: WheelPosition, valve: Valve): StepWords => ({
  stepKey: `${wheel}.stem.renew`,
  code: 'renew-stem',
  wheel,
  does: 'Renew the stem parts',
  how: [renewalWords[valve], ...stemDoubts(sheet, wheel, valve)].join(' '),
  closedBy: 'step.closed',
  figure: stemFigure(sheet, valve),
  needs: ['value', 'photo'],
  waitsFor: [`${wheel}.tire.inside`],
  caution: 'stem',
})

/**
 * A sensor is heard once more before the tire closes over it: afterwards it would cost the whole work again.
 *
 * @source Common practice, no source.
 */
export const readInRim = (wheel: WheelPosition, after: readonly string[]): StepWords => ({
  stepKey: `${wheel}.sensor.read-in-rim`,
  code: 'read-in-rim',
  wheel,
  does: 'Read the sensor before the tire goes on',
  how: 'Its ID, the sheet’s frequency, no pressure, and a temperature like the air around it. Silent at the second try: stop and tell the desk.',
  closedBy: 'step.closed',
  needs: ['value'],
  waitsFor: after,
})

const nutOff =
  'Nut off without penetrant; if seized or corroded: photo, and ask the desk before you use force. Hole clean, free of burrs, of the size on the sensor maker’s sheet.'
const rubberStem =
  'Cut the old rubber stem, pull it outward, never use it again. Lubricate the new one and pull it straight with a stem puller until the shoulder seats; a pull to the side tears it.'

const fittingWords = {
  'clamp-in': `${nutOff} New grommet, washer, nut, core and cap. Stem square, body to the rim as its sheet says, nothing on threads or grommet. Nut by hand, then in one pull, holding the body still. Photo.`,
  'snap-in': `${rubberStem} New screw, at the figure, before the stem is pulled in. The sensor lies in the drop center, not above the flange. Photo.`,
} as const

const renewalWords = {
  'clamp-in': `${nutOff} New grommet, washer, nut, core and cap: each works once. Nut by hand, then in one pull, holding the body still. Photo.`,
  'snap-in': `Screw out, sensor off the stem. ${rubberStem} New screw, at the figure. The sensor lies in the drop center. Photo.`,
  plain: `Only where there was no sensor, or it stayed silent when asked twice before the work: what works is not silenced. ${rubberStem} Photo.`,
} as const satisfies Record<Valve, string>

const fastenedBy = { 'clamp-in': 'stem nut', 'snap-in': 'stem screw' } as const

const stemTorque = ({ sensor }: SpecificationSheet, valve: 'snap-in' | 'clamp-in') =>
  (valve === 'clamp-in' ? sensor?.stemNutTorque : sensor?.stemScrewTorque) ?? null

const stemFigure = (sheet: SpecificationSheet, valve: Valve): StepFigure | null => {
  if (valve === 'plain') return null
  const torque = stemTorque(sheet, valve)
  return torque ? { kind: 'torque', torque, source: `${fastenedBy[valve]}, sensor maker's sheet` } : null
}

/** psi, cold, up to which rubber stems are usual: an industry bulletin on valves. */
const rubberStemPsi = 65

const stemDoubts = (sheet: SpecificationSheet, wheel: WheelPosition, valve: Valve): string[] => [
  ...(valve === 'plain' ? [] : torqueDoubtsOf(sheet, valve)),
  ...(valve === 'clamp-in' ? [] : pressureDoubt(sheet, wheel)),
]

const torqueDoubtsOf = (sheet: SpecificationSheet, valve: 'snap-in' | 'clamp-in'): string[] => {
  const torque = stemTorque(sheet, valve)
  return torque
    ? stemTorqueDoubts(fastenedBy[valve], torque)
    : [`The sheet has no torque for the ${fastenedBy[valve]}: the sensor maker's governs, find it first.`]
}

const pressureDoubt = (sheet: SpecificationSheet, wheel: WheelPosition): string[] => {
  const label = sheet.placard[axleOf(wheel)]?.psi ?? 0
  return label > rubberStemPsi
    ? [
        `The label asks for ${label} psi; rubber stems are commonly good to ${rubberStemPsi} psi cold. The stem maker's limit governs: stop where it is lower.`,
      ]
    : []
}
