/**
 * When the server was last heard of, and how long ago that is. The device's clock only ever adds: one that is set back
 * makes no time of the past, and the server's time never runs backwards. Times in milliseconds since 1970.
 */
export type LastContact = {
  /** The latest time of the server that is known here. */
  readonly serverAt: number
  /** How much the device's clock has added since. */
  readonly since: number
  /** The device's clock when that was last added up. */
  readonly deviceAt: number
  /** For how many hours after a contact the owner lets a tablet open what it keeps. */
  readonly hours: number
}

/** After a reply of the server. One that is older than what is known, as out of a cache, changes nothing. */
export const afterContact = (
  before: LastContact | null,
  { serverAt, hours }: { readonly serverAt: number; readonly hours: number },
  deviceAt: number,
): LastContact =>
  before !== null && serverAt <= before.serverAt
    ? afterWait(before, deviceAt)
    : { serverAt, since: 0, deviceAt, hours }

/** Without a reply: what the device's clock has added. */
export const afterWait = (before: LastContact, deviceAt: number): LastContact => ({
  ...before,
  since: before.since + Math.max(0, deviceAt - before.deviceAt),
  deviceAt,
})

export const timeNow = ({ serverAt, since }: LastContact): number => serverAt + since

export const isTooLongAgo = ({ since, hours }: LastContact): boolean => since > hours * 3_600_000
