import { type SpecificationSheet, sensorOf } from '../sheet.ts'
import type { StepFigure } from '../step.ts'
import type { WheelPosition } from '../wheels.ts'
import { insideKey, liftKeys } from './step-keys.ts'
import { placardFigure, type StepDraft } from './step-of.ts'
import type { TireCare } from './tire-dangers.ts'

/**
 * A wheel comes off its hub.
 *
 * @limits The vehicle maker's instructions govern.
 * @source Common practice, no source.
 */
export const takeWheelOff = (wheel: WheelPosition, after: readonly string[]): StepDraft => ({
  stepKey: `${wheel}.wheel.off`,
  code: 'take-wheel-off',
  values: {},
  wheel,
  closedBy: 'wheel.removed',
  needs: ['value'],
  waitsFor: [...after, liftKeys.up],
})

/**
 * The tire of a wheel in hand is opened, up to the look inside. Where sealant is known or suspected, its gas is first
 * replaced by air, outdoors, and a second person knows of it.
 *
 * @limits The machine maker's instructions and local rules govern.
 * @source The purge: a trade association's advice on sealants, from memory. The rest: common practice, no source.
 */
export const openTire = (wheel: WheelPosition, care: TireCare, after: readonly string[]): StepDraft[] => {
  const purge = care.sealant ? [purgeTire(wheel, care, after)] : []
  return [
    ...purge,
    {
      stepKey: `${wheel}.tire.open`,
      code: 'open-tire',
      values: {},
      wheel,
      closedBy: 'step.closed',
      waitsFor: purge.length > 0 ? purge.map(({ stepKey }) => stepKey) : after,
      cautions: care.runLow ? ['open', 'runLow'] : ['open'],
    },
    {
      stepKey: insideKey(wheel),
      code: 'look-inside',
      values: {},
      wheel,
      closedBy: 'tire.inspected',
      needs: ['value', 'photo'],
      waitsFor: [`${wheel}.tire.open`],
    },
  ]
}

/** A tire that was also run low gets air only in restraint and only at low pressure, because nobody has looked inside. */
const purgeTire = (
  wheel: WheelPosition,
  { runLow }: TireCare,
  after: readonly string[],
): StepDraft & { readonly stepKey: string } => ({
  stepKey: `${wheel}.tire.purge`,
  code: runLow ? 'purge-in-restraint' : 'purge-sealant',
  values: {},
  wheel,
  closedBy: 'sealant.purged',
  needs: ['value', 'second-person'],
  waitsFor: after,
  cautions: runLow ? ['purge', 'restraint'] : ['purge'],
})

/**
 * The tire goes back on the rim, is brought to its working pressure and holds it; ends with balancing. `keepsStem`: its
 * parts were not authorized.
 *
 * @units Core torque as the sensor maker's sheet prints it; at most 40 psi to seat a bead; the label's psi, cold.
 * @limits The sensor maker's, the tire maker's and the vehicle maker's figures govern.
 * @source Common practice, no source; the torque and the pressure: the sheet. The restraint: see `careOf`.
 */
export const closeTire = (
  sheet: SpecificationSheet,
  wheel: WheelPosition,
  { restrained }: TireCare,
  after: readonly string[],
  keepsStem: boolean,
): StepDraft[] => [
  {
    stepKey: `${wheel}.tire.seat`,
    code: restrained ? 'seat-in-restraint' : 'seat-tire',
    values: { keepsStem },
    wheel,
    closedBy: 'step.closed',
    needs: restrained ? ['value'] : [],
    waitsFor: after,
    cautions: restrained ? ['seat', 'restraint'] : ['seat'],
  },
  {
    stepKey: `${wheel}.tire.core`,
    code: keepsStem ? 'put-core-back' : 'torque-core',
    values: {},
    wheel,
    closedBy: 'step.closed',
    figure: coreFigure(sheet),
    needs: ['value'],
    waitsFor: [`${wheel}.tire.seat`],
    cautions: ['stem'],
  },
  {
    stepKey: `${wheel}.tire.inflate`,
    code: restrained ? 'inflate-in-restraint' : 'inflate-tire',
    values: {},
    wheel,
    closedBy: 'step.closed',
    figure: placardFigure(sheet, wheel),
    needs: ['value'],
    waitsFor: [`${wheel}.tire.core`],
    rests: 'placard',
    cautions: restrained ? ['inflate', 'restraint'] : ['inflate'],
  },
  {
    stepKey: `${wheel}.tire.leak`,
    code: 'check-leaks',
    values: {},
    wheel,
    closedBy: 'leak.checked',
    needs: ['value'],
    waitsFor: [`${wheel}.tire.inflate`],
  },
  {
    stepKey: `${wheel}.tire.balance`,
    code: 'balance-wheel',
    values: {},
    wheel,
    closedBy: 'step.closed',
    needs: ['value'],
    waitsFor: [`${wheel}.tire.leak`],
  },
]

const coreFigure = (sheet: SpecificationSheet): StepFigure | null => {
  const sensor = sensorOf(sheet)
  return sensor ? { kind: 'torque', torque: sensor.coreTorque, source: { from: 'valve-core' } } : null
}
