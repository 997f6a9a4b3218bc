import { placardOf, type SpecificationSheet, sensorOf } from '../sheet.ts'
import type { StepFigure } from '../step.ts'
import { axleOf, type WheelPosition } from '../wheels.ts'
import { frequencyFigure, type StepDraft } from './step-of.ts'
import { workLimits } from './work-limits.ts'

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
): { readonly before: StepDraft[]; readonly inside: StepDraft[] } => {
  const figure = frequencyFigure(sheet)
  return {
    before: [
      {
        stepKey: `${wheel}.sensor.match`,
        code: 'match-sensor',
        values: { frequencyMHz: sensorOf(sheet)?.frequencyMHz ?? null, valve },
        wheel,
        closedBy: 'part.drawn',
        figure,
        needs: ['value'],
        rests: 'frequency',
      },
      {
        stepKey: `${wheel}.sensor.program`,
        code: 'program-sensor',
        values: { identity },
        wheel,
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
        values: { valve, highLabelPsi: highLabelPsi(sheet, wheel, valve) },
        wheel,
        closedBy: 'sensor.fitted',
        figure: stemFigure(sheet, valve),
        needs: ['value', 'photo'],
        waitsFor: [`${wheel}.sensor.program`, `${wheel}.tire.inside`],
        cautions: ['stem'],
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
export const serviceStem = (sheet: SpecificationSheet, wheel: WheelPosition, valve: Valve): StepDraft => ({
  stepKey: `${wheel}.stem.renew`,
  code: 'renew-stem',
  values: { valve, highLabelPsi: highLabelPsi(sheet, wheel, valve) },
  wheel,
  closedBy: 'step.closed',
  figure: stemFigure(sheet, valve),
  needs: ['value', 'photo'],
  waitsFor: [`${wheel}.tire.inside`],
  cautions: ['stem'],
})

/**
 * Reads the sensor once more before the tire is mounted, because a silent one would cost the whole work again later.
 *
 * @source Common practice, no source.
 */
export const readInRim = (wheel: WheelPosition, after: readonly string[]): StepDraft => ({
  stepKey: `${wheel}.sensor.read-in-rim`,
  code: 'read-in-rim',
  values: {},
  wheel,
  closedBy: 'step.closed',
  needs: ['value'],
  waitsFor: after,
})

const stemParts = { 'clamp-in': 'stem-nut', 'snap-in': 'stem-screw' } as const

const stemFigure = (sheet: SpecificationSheet, valve: Valve): StepFigure | null => {
  if (valve === 'plain') return null
  const sensor = sensorOf(sheet)
  const torque = (valve === 'clamp-in' ? sensor?.stemNutTorque : sensor?.stemScrewTorque) ?? null
  return torque ? { kind: 'torque', torque, source: { from: stemParts[valve] } } : null
}

/** The label's pressure, if it may be too high for a rubber stem. */
const highLabelPsi = (sheet: SpecificationSheet, wheel: WheelPosition, valve: Valve): number | null => {
  const label = placardOf(sheet)?.[axleOf(wheel)]?.psi ?? 0
  return valve !== 'clamp-in' && label > workLimits.rubberStemPsi ? label : null
}
