import type { PlaceContent } from '@bayledger/contract/places'
import type { PlaceRow } from './place-columns.ts'

type Overrun = PlaceContent['lawProfile']['overrun']

/** The column in which a field of a place is. */
export const columnOf: Readonly<Record<string, keyof PlaceRow>> = {
  name: 'place',
  address: 'address',
  'hours.0': 'monday',
  'hours.1': 'tuesday',
  'hours.2': 'wednesday',
  'hours.3': 'thursday',
  'hours.4': 'friday',
  'hours.5': 'saturday',
  'hours.6': 'sunday',
  altitudeFeet: 'altitude_ft',
  timeZone: 'time_zone',
  'lawProfile.overrun.percentThousandths': 'overrun_percent',
  'lawProfile.overrun.cents': 'overrun_amount',
  'lawProfile.overrun.capCents': 'overrun_at_most',
  lawProfile: 'overrun',
}

/** A place as a row of its file; `placeOfRow` is the way back. */
export const rowOfPlace = ({ hours, lawProfile, ...content }: PlaceContent): PlaceRow => {
  const [monday, tuesday, wednesday, thursday, friday, saturday, sunday] = hours.map((one) => one ?? null)
  const { overrun } = lawProfile
  return {
    place: content.name,
    address: content.address,
    monday: monday ?? null,
    tuesday: tuesday ?? null,
    wednesday: wednesday ?? null,
    thursday: thursday ?? null,
    friday: friday ?? null,
    saturday: saturday ?? null,
    sunday: sunday ?? null,
    bays: content.bays,
    altitude_ft: content.altitudeFeet,
    time_zone: content.timeZone,
    written_estimate_above: lawProfile.writtenEstimateAboveCents,
    overrun: overrun.kind,
    overrun_percent: 'percentThousandths' in overrun ? overrun.percentThousandths / 1_000 : null,
    overrun_amount: 'cents' in overrun ? overrun.cents : null,
    overrun_at_most: 'capCents' in overrun ? overrun.capCents : null,
    consent_by: lawProfile.consentChannels,
    kept_years: lawProfile.retentionYears,
    second_person_for_torque: lawProfile.secondPersonForTorque,
    law_confirmed_on: lawProfile.confirmedOn,
  }
}

/** A row as a place, as far as it says; whether the figures are right is for the place's schema to say. */
export const placeOfRow = (row: PlaceRow): PlaceContent => ({
  name: row.place,
  address: row.address,
  hours: [row.monday, row.tuesday, row.wednesday, row.thursday, row.friday, row.saturday, row.sunday],
  bays: row.bays,
  altitudeFeet: row.altitude_ft,
  timeZone: row.time_zone,
  lawProfile: {
    writtenEstimateAboveCents: row.written_estimate_above,
    overrun: overrunOf(row),
    consentChannels: [...row.consent_by],
    retentionYears: row.kept_years,
    secondPersonForTorque: row.second_person_for_torque,
    confirmedOn: row.law_confirmed_on,
  },
})

/** −1 where a figure is missing that this kind of rule needs: the schema refuses it at its column. */
const overrunOf = (row: PlaceRow): Overrun => {
  const percentThousandths = row.overrun_percent === null ? -1 : Math.round(row.overrun_percent * 1_000)
  const cents = row.overrun_amount ?? -1
  const capCents = row.overrun_at_most
  switch (row.overrun) {
    case 'none':
      return { kind: 'none' }
    case 'percent':
      return { kind: 'percent', percentThousandths, capCents }
    case 'amount':
      return { kind: 'amount', cents }
    case 'greater-of':
      return { kind: 'greater-of', percentThousandths, cents, capCents }
    case 'lesser-of':
      return { kind: 'lesser-of', percentThousandths, cents }
  }
}
