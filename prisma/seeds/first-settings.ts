import type { OverrunRule } from '@bayledger/reckoning/money/overrun'

/** Days and months that the trade usually works with (common practice, no source). */
export const firstThresholds = { comebackDays: 90, linkDays: 7, reservationDays: 2, sensorShelfMonths: 24 }

/** What the law of a place requires of the desk. */
export type LawProfile = {
  readonly writtenEstimateAboveCents: number
  /** How far a bill may go over what was authorized. Information, not advice; the owner confirms it. */
  readonly overrun: OverrunRule
  readonly consentChannels: readonly ('in-person' | 'link' | 'telephone')[]
  readonly retentionYears: number
  readonly secondPersonForTorque: boolean
  /** The day on which the owner confirmed it; `null` until then. */
  readonly confirmedOn: string | null
}

/** The strictest reading, until the owner confirms what the law of the place requires: any added cent needs consent. */
export const strictestLaw: LawProfile = {
  writtenEstimateAboveCents: 0,
  overrun: { kind: 'none' },
  consentChannels: ['in-person', 'link', 'telephone'],
  retentionYears: 7,
  secondPersonForTorque: true,
  confirmedOn: null,
}

/** When a place is open: seven days from Monday; `null` where it is closed. */
export type OpeningHours = ({ readonly opens: string; readonly closes: string } | null)[]

const weekday = { opens: '08:00', closes: '18:00' }

/** Weekdays from 08:00 to 18:00, until the owner says otherwise (common practice, no source). */
export const firstHours: OpeningHours = [weekday, weekday, weekday, weekday, weekday, null, null]
