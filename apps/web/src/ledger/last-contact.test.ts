import { describe, expect, it } from 'vitest'
import { afterContact, afterWait, isTooLongAgo, timeNow } from './last-contact.ts'

const hour = 3_600_000
const server = Date.parse('2026-01-12T16:40:00.000Z')
/** The device is a day behind the server; only differences of its clock count. */
const device = server - 24 * hour
const contact = afterContact(null, { serverAt: server, hours: 72 }, device)

describe('the time since the last contact', () => {
  it('counts on by the device’s clock, whatever that shows', () => {
    const later = afterWait(contact, device + 5 * hour)
    expect(timeNow(later)).toBe(server + 5 * hour)
    expect(isTooLongAgo(later)).toBe(false)
  })

  it('is too long once the owner’s hours have passed', () => {
    expect(isTooLongAgo(afterWait(contact, device + 72 * hour))).toBe(false)
    expect(isTooLongAgo(afterWait(contact, device + 72 * hour + 1))).toBe(true)
  })

  it('is not made shorter by setting the clock back', () => {
    const waited = afterWait(contact, device + 71 * hour)
    const setBack = afterWait(waited, device)
    expect(timeNow(setBack)).toBe(server + 71 * hour)
    expect(isTooLongAgo(afterWait(setBack, device + 2 * hour))).toBe(true)
  })

  it('begins anew with a reply of the server, and takes over the owner’s hours', () => {
    const waited = afterWait(contact, device + 80 * hour)
    const again = afterContact(waited, { serverAt: server + 80 * hour, hours: 8 }, device + 80 * hour)
    expect(isTooLongAgo(again)).toBe(false)
    expect(isTooLongAgo(afterWait(again, device + 89 * hour))).toBe(true)
  })

  it('is not begun anew by an old reply', () => {
    const waited = afterWait(contact, device + 71 * hour)
    const replayed = afterContact(waited, { serverAt: server, hours: 72 }, device + 73 * hour)
    expect(isTooLongAgo(replayed)).toBe(true)
  })
})
