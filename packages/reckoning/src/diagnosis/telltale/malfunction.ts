import type { Evidence, WheelEvidence } from '../../evidence/evidence-schema.ts'
import { kilopascals, psi } from '../../evidence/si.ts'
import { isSameFrequency } from '../../sensor/frequency.ts'
import { idKey } from '../../sensor/sensor-id.ts'
import { readingOrder, roadPositions, type WheelPosition } from '../../wheels.ts'
import type { Known } from './known.ts'

/**
 * Whether a system with a sensor in each wheel cannot hear one of them. Yes where a sensor stays silent while another
 * answers, sends on another frequency than its neighbors, or where the vehicle waits for an ID that no wheel sends; no
 * only where every ID it waits for was heard, from a sensor in which nothing at all is doubtful.
 */
export const malfunction = (evidence: Evidence): Known => {
  const wheels = listenedTo(evidence)
  if (wheels === null) return 'not-known'
  if (silentBesideAnswer(evidence, wheels) || offFrequencyAlone(evidence, wheels)) return 'yes'
  if (evidence.controlModule?.state === 'blank') return 'yes'
  const stored = storedIds(evidence, wheels)
  if (stored === null || isTwiceHeard(evidence)) return 'not-known'
  const heard = heardKeys(evidence)
  const isHeard = (key: string): boolean => heard.includes(key)
  if (everyWheelToldItsId(wheels) && !stored.waitedFor.every(isHeard)) return 'yes'
  const isSameSet = stored.all.every(isHeard) && heard.every((key) => stored.all.includes(key))
  return isSameSet && isWithoutDoubt(evidence, wheels) ? 'no' : 'not-known'
}

type Wheel = { readonly position: WheelPosition; readonly given: WheelEvidence }

/** The wheels that the vehicle listens to; null where that is not known, or where a temporary spare is mounted among them. */
const listenedTo = ({ vehicle, wheels }: Evidence): readonly Wheel[] | null => {
  const { spare, spareMonitored } = vehicle ?? {}
  if (spare !== 'none' && typeof spareMonitored !== 'boolean') return null
  const positions = spareMonitored === true && spare !== 'none' ? readingOrder : roadPositions
  const listened = positions.map((position) => ({ position, given: wheels?.[position] ?? {} }))
  return listened.some(({ given }) => given.mounted === 'temporary-spare') ? null : listened
}

const isAskedTwice = ({ given }: Wheel): boolean => given.answer === 'silent' && (given.tries ?? 0) >= 2

const silentBesideAnswer = ({ wheels }: Evidence, listened: readonly Wheel[]): boolean =>
  listened.some(isAskedTwice) && readingOrder.some((position) => wheels?.[position]?.answer === 'answered')

const hasFrequency = ({ vehicle }: Evidence, { given }: Wheel): boolean | null => {
  const needed = vehicle?.sensorFrequencyMHz
  if (given.answer !== 'answered' || typeof given.frequencyMHz !== 'number' || typeof needed !== 'number')
    return null
  return isSameFrequency(given.frequencyMHz, needed)
}

/** If all of them differ from one figure, the figure is probably wrong. */
const offFrequencyAlone = (evidence: Evidence, listened: readonly Wheel[]): boolean => {
  const fits = listened.map((wheel) => hasFrequency(evidence, wheel))
  return fits.includes(false) && fits.includes(true)
}

type StoredIds = {
  /** Of the wheels that the vehicle listens to. */
  readonly waitedFor: readonly string[]
  readonly all: readonly string[]
}

/** The IDs that the vehicle holds, as numbers; null where not all of those it waits for were read. */
const storedIds = (evidence: Evidence, listened: readonly Wheel[]): StoredIds | null => {
  const { state, ids, notation } = evidence.controlModule ?? {}
  if (state !== 'read' || !notation) return null
  const keyAt = (position: WheelPosition): string[] => {
    const id = ids?.[position]
    return typeof id === 'string' ? [idKey(id, notation)] : []
  }
  const waitedFor = listened.flatMap(({ position }) => keyAt(position))
  return waitedFor.length < listened.length ? null : { waitedFor, all: readingOrder.flatMap(keyAt) }
}

const heardKeys = ({ wheels }: Evidence): readonly string[] =>
  readingOrder.flatMap((position) => {
    const wheel = wheels?.[position]
    return wheel?.answer === 'answered' && typeof wheel.id === 'string' ? [idKey(wheel.id, 'hex')] : []
  })

const isTwiceHeard = (evidence: Evidence): boolean => {
  const heard = heardKeys(evidence)
  return new Set(heard).size < heard.length
}

const everyWheelToldItsId = (listened: readonly Wheel[]): boolean =>
  listened.every(({ given }) => given.answer === 'answered' && typeof given.id === 'string')

const isWithoutDoubt = (evidence: Evidence, listened: readonly Wheel[]): boolean =>
  listened.every((wheel) => isSoundSensor(evidence, wheel)) &&
  (evidence.controlModule?.codes?.every((code) => code.class === 'low-pressure') ?? false)

/** It answered, on the right frequency, with a battery that is not low, and reports what its tire holds. */
const isSoundSensor = (evidence: Evidence, wheel: Wheel): boolean => {
  const { given, position } = wheel
  const stored = evidence.controlModule?.ids?.[position]
  const notation = evidence.controlModule?.notation ?? 'hex'
  // A spare that was rotated in is waited for at its old place.
  const isInPlace =
    stored !== null && stored !== undefined && idKey(stored, notation) === idKey(given.id ?? '', 'hex')
  return (
    given.answer === 'answered' &&
    typeof given.id === 'string' &&
    hasFrequency(evidence, wheel) === true &&
    given.battery === 'ok' &&
    given.followsPressure !== false &&
    (given.learnRefusals ?? 0) === 0 &&
    typeof given.sensorPressure === 'number' &&
    kilopascals(given.sensorPressure, evidence.units.pressure) > psi(0.5) &&
    (isInPlace || evidence.vehicle?.spareMonitored !== true)
  )
}
