import { WheelPosition, wheelNames } from '../wheels.ts'

const members: Readonly<Record<string, string>> = {
  gauge: 'gauge pressure',
  answer: 'whether the sensor answers',
  tries: 'times asked',
  id: 'sensor ID',
  sensorPressure: 'sensor pressure',
  sensorTemperature: 'sensor temperature',
  battery: 'sensor battery',
  frequencyMHz: 'sensor frequency',
  followsPressure: 'whether the sensor follows a change of pressure',
  valve: 'kind of valve stem',
  stem: 'condition of the stem',
  sensorAgeMonths: 'age of the sensor',
  tireAgeYears: 'age of the tire',
  treadDepth32nds: 'tread depth',
  sealantSeen: 'sealant in the tire',
  tireDamage: 'damage to the tire',
  fastenerDamage: 'damage to studs or nuts',
  mounted: 'which wheel is mounted',
  learnRefusals: 'relearns that the sensor refused',
}

const paths: Readonly<Record<string, string>> = {
  controlModule: 'what the vehicle has stored',
  'controlModule.state': 'what the vehicle has stored',
  'controlModule.notation': 'how the vehicle writes sensor IDs',
  'controlModule.ids': 'sensor IDs stored in the vehicle',
  'controlModule.codes': 'trouble codes stored in the vehicle',
  strayIds: 'other sensors heard nearby',
  'light.lampCheck': 'whether the warning light lights at key-on',
  'light.behavior': 'what the warning light does, seen by us',
  'light.reported': 'what the warning light did, as told',
  'vehicle.system': 'kind of monitoring system',
  'vehicle.sensorFrequencyMHz': 'frequency that the vehicle listens to',
  'vehicle.placard.front': 'front pressure on the door label',
  'vehicle.placard.rear': 'rear pressure on the door label',
  'vehicle.placard.spare': 'spare pressure on the door label',
  'vehicle.placard.verified': 'whether the door label’s figures are verified',
  'vehicle.warnAt.front': 'the vehicle maker’s own warning point, front',
  'vehicle.warnAt.rear': 'the vehicle maker’s own warning point, rear',
  'vehicle.warnAt.spare': 'the vehicle maker’s own warning point, spare',
  'surroundings.outdoor': 'outdoor temperature',
  'surroundings.tires': 'whether the tires are cold',
  'surroundings.tireTemperature': 'tire temperature',
  'surroundings.altitude': 'altitude',
  'surroundings.overnightLow': 'expected overnight low',
  'surroundings.minutesDriven': 'minutes driven before',
  'surroundings.lastSet': 'when the pressures were last set',
  'surroundings.lastSet.temperature': 'outdoor temperature when last set',
  'surroundings.lastSet.altitude': 'altitude when last set',
  'history.earlierReadings': 'earlier readings of this vehicle',
  'history.idsOnOtherVehicles': 'whether a sensor ID belongs to another vehicle',
  'history.ourWorkOn': 'our earlier work on this vehicle',
  'history.partsUnderWarranty': 'parts under warranty',
}

/** A field of the evidence in plain words: `wheels.LF.gauge` is "left front gauge pressure". */
export const fieldWords = (field: string): string => {
  const known = paths[field]
  if (known) return known
  const stored = WheelPosition.safeParse(field.split('controlModule.ids.')[1])
  if (stored.success) return `${wheelNames[stored.data]} sensor ID stored in the vehicle`
  if (field.startsWith('events.')) return `as told: ${spaced(field.split('.').slice(1).join(' '))}`
  const parts = wheelField(field)
  if (parts)
    return `${wheelNames[parts.wheel]} ${parts.member === null ? 'wheel' : memberWords(parts.member)}`
  return field.split('.').map(spaced).join(', ')
}

/** Facts whose names are questions while nobody has answered them. */
const seen: Readonly<Record<string, string>> = {
  answer: 'sensor',
  followsPressure: 'sensor follows a change of pressure',
  mounted: 'wheel mounted',
}

/** Where a fact was seen, to stand before what was seen: `wheels.RR.answer` is "right rear sensor". */
export const seenWords = (field: string): string => {
  const parts = wheelField(field)
  const thing = parts?.member ? seen[parts.member] : undefined
  return parts && thing ? `${wheelNames[parts.wheel]} ${thing}` : fieldWords(field)
}

/** A field's words with a capital, to begin a line. */
export const fieldTitle = (field: string): string => sentence(fieldWords(field))

/**
 * Fields that nobody looked at, in few lines: what was not asked of the customer, what was not looked at on
 * which wheels, and the rest.
 */
export const uncheckedLines = (fields: readonly string[]): string[] => {
  const byMember = new Map<string, WheelPosition[]>()
  const asked: string[] = []
  const rest: string[] = []
  for (const field of fields) {
    const parts = wheelField(field)
    if (parts?.member) byMember.set(parts.member, [...(byMember.get(parts.member) ?? []), parts.wheel])
    else if (field.startsWith('events.')) asked.push(spaced(field.split('.').slice(1).join(' ')))
    else rest.push(fieldWords(field))
  }
  return [
    ...[...byMember].map(([member, wheels]) => `${sentence(memberWords(member))}: ${wheels.join(', ')}`),
    ...(rest.length === 0 ? [] : [sentence(rest.join('; '))]),
    ...(asked.length === 0 ? [] : [`Not asked of the customer: ${asked.join(', ')}`]),
  ]
}

const wheelField = (field: string): { wheel: WheelPosition; member: string | null } | null => {
  const [head, second, ...member] = field.split('.')
  const wheel = WheelPosition.safeParse(second)
  if (head !== 'wheels' || !wheel.success) return null
  return { wheel: wheel.data, member: member.length === 0 ? null : member.join(' ') }
}

const memberWords = (member: string): string => members[member] ?? spaced(member)

const spaced = (name: string): string =>
  name
    .replace(/([A-Z])/g, ' $1')
    .replaceAll('-', ' ')
    .toLowerCase()

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
