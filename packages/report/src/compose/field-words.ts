import { WheelPosition, wheelNames } from '@bayledger/reckoning/wheels'
import { sentence } from './figures.ts'

const members: Readonly<Record<string, string>> = {
  gauge: 'gauge pressure',
  answer: 'whether the sensor answers',
  tries: 'times asked',
  id: 'sensor ID',
  sensorPressure: 'sensor pressure',
  sensorTemperature: 'sensor temperature',
  battery: 'sensor battery',
  frequencyMHz: 'sensor frequency',
  followsPressure: 'whether the sensor follows pressure',
  valve: 'kind of valve stem',
  stem: 'condition of the stem',
  sensorAgeMonths: 'age of the sensor',
  tireAgeYears: 'age of the tire',
  treadDepth32nds: 'tread depth',
  sealantSeen: 'sealant in the tire',
  tireDamage: 'damage to the tire',
  fastenerDamage: 'damage to studs or nuts',
  mounted: 'which wheel is mounted',
}

const paths: Readonly<Record<string, string>> = {
  controlModule: 'what the vehicle has stored',
  'controlModule.state': 'what the vehicle has stored',
  'controlModule.ids': 'sensor IDs stored in the vehicle',
  'controlModule.codes': 'trouble codes stored in the vehicle',
  'light.lampCheck': 'whether the warning light lights at key-on',
  'light.behavior': 'what the warning light does, seen by us',
  'light.reported': 'what the warning light did, as told',
  'vehicle.system': 'kind of monitoring system',
  'vehicle.placard': 'pressures on the door label',
  'surroundings.outdoor': 'outdoor temperature',
  'surroundings.lastSet': 'when the pressures were last set',
  'surroundings.overnightLow': 'expected overnight low',
  'surroundings.minutesDriven': 'minutes driven before',
  'history.earlierReadings': 'earlier readings',
  strayIds: 'other sensors heard nearby',
}

/** A field of the evidence in plain words: `wheels.LF.gauge` is "left front gauge pressure". */
export const fieldWords = (field: string): string => {
  const known = paths[field]
  if (known) return known
  const [head, second, member] = field.split('.')
  const wheel = head === 'wheels' ? WheelPosition.safeParse(second) : null
  if (wheel?.success)
    return member
      ? `${wheelNames[wheel.data]} ${members[member] ?? spaced(member)}`
      : `${wheelNames[wheel.data]} wheel`
  return field.split('.').map(spaced).join(', ')
}

export const fieldTitle = (field: string): string => sentence(fieldWords(field))

const spaced = (name: string): string =>
  name
    .replace(/([A-Z])/g, ' $1')
    .replaceAll('-', ' ')
    .toLowerCase()
