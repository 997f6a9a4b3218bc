import { OverrunRule } from '@bayledger/reckoning/money/overrun'
import * as z from 'zod/mini'
import { csvEndpoints } from './csv-endpoints.ts'
import { Day, line } from './identity.ts'
import { recordEndpoints } from './record.ts'

const isTimeZone = (name: string): boolean => {
  try {
    return new Intl.DateTimeFormat('en-US', { timeZone: name }).resolvedOptions().timeZone !== ''
  } catch {
    return false
  }
}

/** Hours and minutes of a day, as "07:30". */
const ClockTime = z
  .string()
  .check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time from 00:00 to 23:59, as 07:30'))

const OpenHours = z
  .strictObject({ opens: ClockTime, closes: ClockTime })
  .check(z.refine(({ opens, closes }) => opens < closes, 'a time to close that is after the time to open'))

/** What the law of a place requires of the desk, as its owner confirmed it on a day. Information, not advice. */
export const LawProfile = z.strictObject({
  writtenEstimateAboveCents: z.int().check(z.gte(0), z.lte(1_000_000)),
  overrun: OverrunRule,
  consentChannels: z.array(z.enum(['in-person', 'link', 'telephone'])).check(
    z.minLength(1),
    z.maxLength(3),
    z.refine((one) => new Set(one).size === one.length, 'each once'),
  ),
  retentionYears: z.int().check(z.gte(1), z.lte(100)),
  secondPersonForTorque: z.boolean(),
  confirmedOn: z.nullable(Day),
})

export const PlaceContent = z.strictObject({
  name: line(80),
  /** As it is printed; may be empty. */
  address: z.string().check(z.trim(), z.maxLength(200), z.regex(/^[^\p{Cc}\p{Cs}]*$/u)),
  /** Seven days from Monday; `null` where it is closed. */
  hours: z.array(z.nullable(OpenHours)).check(z.length(7)),
  bays: z.int().check(z.gte(0), z.lte(200)),
  /** Feet above sea level. */
  altitudeFeet: z.int().check(z.gte(-1_500), z.lte(20_000)),
  timeZone: z
    .string()
    .check(z.maxLength(60), z.refine(isTimeZone, 'the name of a time zone, as America/New_York')),
  lawProfile: LawProfile,
})
export type PlaceContent = z.infer<typeof PlaceContent>

export const places = recordEndpoints({
  name: { one: 'Place', all: 'Places' },
  words: { one: 'place', all: 'places' },
  path: '/api/places',
  roles: ['owner'],
  content: PlaceContent,
  facts: z.strictObject({}),
})

export const placesCsv = csvEndpoints({
  name: 'Places',
  words: 'places',
  path: '/api/places',
  roles: ['owner'],
})
