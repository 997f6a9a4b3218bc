const day = 24 * 60 * 60_000

/** A link opens one order for a week, and a phone that opened it for half a day. */
export const linkMs = 7 * day
export const openedMs = day / 2
