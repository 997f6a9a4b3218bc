import type {
  EventOfOneWheel,
  VehicleField,
  WheelField,
} from '@bayledger/reckoning/diagnosis/checks/checked-fields'
import type { EventKind } from '@bayledger/reckoning/evidence/evidence-schema'
import { WheelPosition } from '@bayledger/reckoning/wheels'
import type { WheelsWording } from './wheels.ts'

/** The request for each fact that nobody has checked yet. */
export type ChecksWording = {
  readonly ofVehicle: Readonly<Record<VehicleField, string>>
  readonly ofWheel: Readonly<Record<WheelField, (wheel: string) => string>>
  readonly events: Readonly<Record<EventKind, string>>
  readonly whichWheel: Readonly<Record<EventOfOneWheel, string>>
  readonly storedId: (wheel: WheelPosition) => string
}

type Words = { readonly checks: ChecksWording; readonly wheels: WheelsWording }

/** What to do to get one fact: `wheels.LF.gauge` is "Gauge the left front tire." Empty for a field that is never requested. */
export const checkWords = ({ checks, wheels }: Words, field: string): string => {
  if (Object.hasOwn(checks.ofVehicle, field)) return checks.ofVehicle[field as VehicleField]
  const [part, name = '', fact = ''] = field.split('.')
  if (part === 'wheels') {
    const wheel = WheelPosition.safeParse(name)
    const ask = Object.hasOwn(checks.ofWheel, fact) ? checks.ofWheel[fact as WheelField] : undefined
    return wheel.success && ask ? ask(wheels.names[wheel.data]) : ''
  }
  if (part === 'events')
    return (
      (fact === 'wheel' ? checks.whichWheel[name as EventOfOneWheel] : checks.events[name as EventKind]) ?? ''
    )
  const stored = WheelPosition.safeParse(fact)
  return stored.success ? checks.storedId(stored.data) : ''
}
