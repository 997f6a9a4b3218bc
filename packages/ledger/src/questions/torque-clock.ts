import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState, TorqueSeal, Written } from '../state.ts'

/**
 * How long the rounds of a wheel that count took by the tablet's clock, in seconds, and how many whole minutes after the
 * last of them it was checked; `null` where nothing was timed, or not checked.
 */
export type TorqueClock = { readonly seconds: number | null; readonly checkedAfterMinutes: number | null }

export const torqueClock = (state: OrderState, wheel: WheelPosition): TorqueClock => {
  const { rounds = {}, checked = null } = state.work[wheel] ?? {}
  const seals = Object.values(rounds).toSorted((one, other) => one.written.seq - other.written.seq)
  const last = seals.at(-1)
  return {
    seconds: secondsOf(seals),
    checkedAfterMinutes: checked && last ? minutesBetween(last.written, checked.written) : null,
  }
}

/** One round without a time leaves the whole unknown. */
const secondsOf = (seals: readonly TorqueSeal[]): number | null => {
  const seconds = seals.flatMap(({ timed }) => (timed === null ? [] : [timed.seconds]))
  return seals.length === 0 || seconds.length < seals.length
    ? null
    : seconds.reduce((sum, one) => sum + one, 0)
}

/** On one device by its clock; on two, whose clocks may differ, by the server's. */
const minutesBetween = (before: Written, after: Written): number => {
  const isOneDevice = before.deviceId === after.deviceId
  const [from, to] =
    isOneDevice || before.receivedAt === null || after.receivedAt === null
      ? [before.writtenAt, after.writtenAt]
      : [before.receivedAt, after.receivedAt]
  return Math.max(0, Math.floor((Date.parse(to) - Date.parse(from)) / 60_000))
}
