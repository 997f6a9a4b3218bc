import { placardOf, type SpecificationSheet, sensorOf } from '../sheet.ts'
import { gaugeKilopascals } from '../units/measured.ts'
import { inKilopascals } from '../units/pressure-units.ts'
import type { SensorNeed } from './part-match.ts'

/**
 * What a vehicle's specification sheet requires of a sensor; `null` where it has no sensors. The highest figure of the door
 * label counts, whichever wheel it is for: wheels change places.
 *
 * @units kPa gauge, cold
 * @limits The sheet names no valve hole and no highest speed, so neither is checked.
 * @source this program's own rule; the figures are the vehicle maker's, as the sheet holds them
 */
export const sensorNeed = (sheet: SpecificationSheet): SensorNeed | null => {
  const sensor = sensorOf(sheet)
  if (sensor === null) return null
  const label = placardOf(sheet)
  const figures = label ? [label.front, label.rear, ...(label.spare ? [label.spare] : [])] : []
  return {
    frequencyMHz: sensor.frequencyMHz,
    stems: [sensor.stem],
    protocol: sensor.protocol,
    highestCold:
      figures.length === 0
        ? null
        : gaugeKilopascals(Math.max(...figures.map(({ psi }) => inKilopascals({ value: psi, unit: 'psi' })))),
    hole: null,
    fastest: null,
  }
}
