import type { Evidence, WheelEvidence } from '../../evidence/evidence-schema.ts'
import { kelvin, kilopascals, psi } from '../../evidence/si.ts'
import { warningPoint } from '../../pressure/warning-point.ts'
import { axleOf, readingOrder, roadPositions, type WheelPosition } from '../../wheels.ts'
import type { Known } from './known.ts'

/**
 * Whether a tire that the system watches is at or under its warning point. No only where every such tire is known to
 * be clear of it: by gauge and by its sensor, as it is and once it is as cold as it may become, and by as much as a
 * light that was lit before needs to go out.
 */
export const lowTire = (evidence: Evidence): Known => {
  const tires = watched(evidence).map((position) => ofTire(evidence, position))
  if (tires.includes('yes')) return 'yes'
  return tires.every((one) => one === 'no') ? 'no' : 'not-known'
}

const watched = ({ vehicle }: Evidence): readonly WheelPosition[] => {
  const spareIsNot =
    vehicle?.spare === 'none' || vehicle?.spareMonitored === false || vehicle?.system !== 'direct'
  return spareIsNot ? roadPositions : readingOrder
}

/** A hundredth of a psi: nearer to a limit than this, nothing is claimed. */
const nearness = psi(0.01)

/** A light that is lit goes out only well above the point at which it came on. */
const hold = psi(3)

const ofTire = (evidence: Evidence, position: WheelPosition): Known => {
  const wheel = evidence.wheels?.[position]
  const limit = limitOf(evidence, position)
  if (!wheel || limit === null || wheel.mounted === 'temporary-spare' || !isFresh(evidence, position))
    return 'not-known'
  const unit = evidence.units.pressure
  const gauge = typeof wheel.gauge === 'number' ? kilopascals(wheel.gauge, unit) : null
  if (gauge === null || gauge < 0 || gauge > psi(100)) return 'not-known'
  const told = wheel.answer === 'answered' ? wheel.sensorPressure : null
  const sensor = typeof told === 'number' ? kilopascals(told, unit) : gauge
  if (gauge <= limit - nearness && sensor <= limit - nearness) return 'yes'
  const clear = limit + hold + nearness
  const coldest = atItsColdest(evidence, wheel, gauge)
  return coldest !== null && Math.min(gauge, sensor, coldest) > clear ? 'no' : 'not-known'
}

const limitOf = ({ vehicle, units }: Evidence, position: WheelPosition): number | null => {
  const axle = axleOf(position)
  const label = vehicle?.placard?.[axle]
  const trigger = vehicle?.warnAt?.[axle]
  const { front, rear, verified } = vehicle?.placard ?? {}
  if (verified !== true || typeof front !== 'number' || typeof rear !== 'number' || typeof label !== 'number')
    return null
  return warningPoint({
    placard: kilopascals(label, units.pressure),
    makersTrigger: typeof trigger === 'number' ? kilopascals(trigger, units.pressure) : null,
    loadClass: vehicle?.loadClass?.[axle] ?? null,
    column: units.pressure === 'psi' ? 'psi' : 'kPa',
  })
}

const isFresh = ({ events }: Evidence, position: WheelPosition): boolean =>
  !(events ?? []).some(
    ({ kind, happened, wheel }) =>
      (kind === 'air-added' || kind === 'moved-since-reading') &&
      happened !== false &&
      (wheel === null || wheel === undefined || wheel === position),
  )

/** Open air in kPa at the lowest road on earth; higher up a tire loses less to the cold, so this leaves it the least. */
const openAir = 107

/** The gauge value at the coldest temperature that was noted, from the warmest the tire may have: in kPa. */
const atItsColdest = (
  { units, wheels, surroundings }: Evidence,
  wheel: WheelEvidence,
  gauge: number,
): number | null => {
  const inKelvin = (one: number | null | undefined) =>
    typeof one === 'number' ? [kelvin(one, units.temperature)] : []
  const told = roadPositions.flatMap((position) => inKelvin(wheels?.[position]?.sensorTemperature))
  const tire = [...inKelvin(wheel.sensorTemperature), ...inKelvin(surroundings?.tireTemperature), ...told]
  const around = [...inKelvin(surroundings?.outdoor), ...inKelvin(surroundings?.overnightLow)]
  if (surroundings?.tires === 'cold' && tire.length === 0 && around.length < 2) return gauge
  if (tire.length === 0 || around.length === 0) return null
  const all = [...tire, ...around]
  // A failed sensor sends an end of its range: nothing is computed from such a figure.
  if (Math.min(...all) < 240 || Math.max(...all) > 390) return null
  return ((gauge + openAir) * Math.min(...all)) / Math.max(...all) - openAir
}
