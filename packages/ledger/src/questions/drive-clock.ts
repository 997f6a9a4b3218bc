import type { DriveDoubt } from '../hold.ts'
import type { OrderState, Written } from '../state.ts'
import type { Timed } from '../timed.ts'
import { clocksApart } from './clocks-apart.ts'

const minuteMs = 60_000

/** Typed minutes are whole, so a drive of 21.6 minutes may be called one of 22 (our own bound, no source). */
const roundingMinutes = 1

type Drive = { readonly minutes: number; readonly timed: Timed }

/** A drive that is being recorded: when by its device's clock, and when by the server's. */
type Moment = { readonly writtenAt: string; readonly now: string }

/**
 * Why the minutes of a drive cannot be, by the tablet's clock or by the entries before it, or why its clock cannot be
 * relied on; `null` if they can.
 */
export const driveDoubt = (state: OrderState, drive: Drive, moment: Moment): DriveDoubt | null => {
  const limits = [
    ...(drive.timed === null ? [] : [{ by: 'timed' as const, minutes: drive.timed.seconds / 60 }]),
    ...limitByEntries(state, moment),
  ].toSorted((one, other) => one.minutes - other.minutes)
  const [least] = limits
  if (least !== undefined && !fitsInto(drive.minutes, least.minutes))
    return { typed: drive.minutes, clock: wholeMinutes(least.minutes), by: least.by }
  const seconds = clocksApart(drive.timed)
  return seconds === null ? null : { typed: drive.minutes, clock: wholeMinutes(seconds / 60), by: 'clocks' }
}

/** How long the order has been open, in minutes, when something is recorded in it; `null` before it is opened. */
export const orderMinutes = ({ opened }: OrderState, moment: Moment): number | null =>
  opened ? minutesSince(opened.written, moment) : null

/** Whether a drive of these typed minutes fits into a time, in minutes. */
export const fitsInto = (typed: number, minutes: number): boolean => typed <= minutes + roundingMinutes

/**
 * The minutes of a recorded drive that count for the proof: as typed, and never more than the clock's. Typed minutes that
 * the clock contradicts count only when a person has settled them.
 */
export const countedMinutes = (state: OrderState, drive: OrderState['drives'][number]): number => {
  const doubt = doubtOf(state, drive.written.entryId)
  if (doubt) return Math.min(drive.minutes, doubt.clock)
  if (drive.timed === null) return drive.minutes
  const clock = drive.timed.seconds / 60
  const isSettled = drive.written.receivedAt !== null && !fitsInto(drive.minutes, clock)
  return isSettled ? drive.minutes : Math.min(drive.minutes, wholeMinutes(clock))
}

/** What a drive is doubted for, until a person settles it. */
export const doubtOf = ({ holds }: OrderState, entryId: string): DriveDoubt | null => {
  const hold = holds.find(
    ({ code, written }) => code === 'drive-minutes-doubtful' && written.entryId === entryId,
  )
  return hold && 'values' in hold && hold.code === 'drive-minutes-doubtful' ? hold.values : null
}

/** Drives whose minutes the clock contradicts, until a person has settled each. */
export const doubtedDrives = (state: OrderState): OrderState['drives'] =>
  state.drives.filter(({ written }) => doubtOf(state, written.entryId) !== null)

const limitByEntries = (state: OrderState, moment: Moment) => {
  const since = lastAtTheVehicle(state).map((written) => minutesSince(written, moment))
  return since.length === 0 ? [] : [{ by: 'entries' as const, minutes: Math.min(...since) }]
}

/** By the device's clock or the server's, whichever gives more: only what both contradict is a contradiction. */
const minutesSince = ({ writtenAt, receivedAt }: Written, moment: Moment): number =>
  Math.max(
    0,
    Date.parse(moment.writtenAt) - Date.parse(writtenAt),
    receivedAt === null ? 0 : Date.parse(moment.now) - Date.parse(receivedAt),
  ) / minuteMs

/** Entries that show the vehicle in the shop: its wheels were worked on, it came back from a drive, or left for this one. */
const lastAtTheVehicle = ({ work, drives, opened, onTheRoad }: OrderState): Written[] =>
  [
    opened,
    drives.at(-1),
    onTheRoad,
    ...Object.values(work).flatMap(({ removed, mounted, checked, pressure }) => [
      removed,
      mounted,
      checked,
      pressure,
    ]),
  ].flatMap((fact) => (fact ? [fact.written] : []))

const wholeMinutes = (minutes: number): number => Math.floor(minutes)
