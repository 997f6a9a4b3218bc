import type { Casing, Evidence } from '../../evidence/evidence-schema.ts'
import { kilopascals } from '../../evidence/si.ts'
import { warningPoint } from '../../pressure/warning-point.ts'
import type { LoadClass } from '../../sheet.ts'
import type { GaugeKilopascals } from '../../units/measured.ts'
import { type Axle, axleOf, type WheelPosition } from '../../wheels.ts'

/** What the door label and the sheet say for one wheel; pressures in kPa, null where not known or not verified. */
export type LabelFacts = {
  readonly label: GaugeKilopascals | null
  /** The label's figure even where nobody verified it: a stop does not wait for a label. */
  readonly labelAsGiven: GaugeKilopascals | null
  readonly warn: GaugeKilopascals | null
  readonly sidewallMaximum: GaugeKilopascals | null
  readonly loadClass: LoadClass | null
  readonly casing: Casing | null
}

/** Whether pressures can be judged at all: both axles' figures are there and verified. */
export const isPlacardVerified = (evidence: Evidence): boolean => {
  const placard = evidence.vehicle?.placard
  return placard?.verified === true && typeof placard.front === 'number' && typeof placard.rear === 'number'
}

/** `carriesSpare`: the temporary spare is mounted at this road position, so the spare's figures govern. */
export const readLabel = (evidence: Evidence, position: WheelPosition, carriesSpare: boolean): LabelFacts => {
  const axle: Axle = carriesSpare ? 'spare' : axleOf(position)
  const { vehicle, units } = evidence
  const figure = (value: number | null | undefined): GaugeKilopascals | null =>
    value === null || value === undefined ? null : kilopascals(value, units.pressure)
  const labelAsGiven = figure(vehicle?.placard?.[axle])
  const label = isPlacardVerified(evidence) ? labelAsGiven : null
  // A full-size spare is as a rule one of the vehicle's own tires.
  const asRear = axle === 'spare' && vehicle?.spare === 'full-size'
  const loadClass = vehicle?.loadClass?.[axle] ?? (asRear ? vehicle?.loadClass?.rear : null) ?? null
  const column = units.pressure === 'psi' ? 'psi' : 'kPa'
  return {
    label,
    labelAsGiven,
    warn:
      label === null
        ? null
        : warningPoint({
            placard: label,
            makersTrigger: figure(vehicle?.warnAt?.[axle]),
            loadClass,
            column,
          }),
    sidewallMaximum: figure(vehicle?.sidewallMaximum?.[axle]),
    loadClass,
    casing: vehicle?.casing?.[axle] ?? (asRear ? vehicle?.casing?.rear : null) ?? null,
  }
}
