import { createHmac, timingSafeEqual } from 'node:crypto'

/** Each code is of one step of time, in seconds. */
const stepSeconds = 30

export const stepAt = (at: Date): number => Math.floor(at.getTime() / 1000 / stepSeconds)

/**
 * The time-based one-time password of a step. Authenticator apps take six digits and SHA-1 for granted.
 *
 * @source RFC 6238, section 4.2, over RFC 4226, section 5.3.
 */
export const totpCode = (secret: Uint8Array, step: number, digits = 6): string => {
  const counter = Buffer.alloc(8)
  counter.writeBigUInt64BE(BigInt(step))
  const mac = createHmac('sha1', secret).update(counter).digest()
  const offset = mac.readUInt8(mac.length - 1) & 0x0f
  const number = mac.readUInt32BE(offset) & 0x7f_ff_ff_ff
  return String(number % 10 ** digits).padStart(digits, '0')
}

/**
 * The step of which a code is: the present one, or the one before or after, for clocks that differ a little and for typing
 * (RFC 6238, section 5.2). `null`: of none of them.
 */
export const stepOfCode = (secret: Uint8Array, code: string, now: Date): number | null => {
  const present = stepAt(now)
  const typed = Buffer.from(code)
  return (
    [present, present - 1, present + 1].find((step) => {
      const wanted = Buffer.from(totpCode(secret, step))
      return wanted.length === typed.length && timingSafeEqual(wanted, typed)
    }) ?? null
  )
}

const base32 = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ234567'

/** Bytes as apps take them when they are typed. @source RFC 4648, section 6, without padding. */
export const toBase32 = (bytes: Uint8Array): string => {
  const bits = Array.from(bytes, (byte) => byte.toString(2).padStart(8, '0')).join('')
  return (bits.match(/.{1,5}/g) ?? []).map((five) => base32[Number.parseInt(five.padEnd(5, '0'), 2)]).join('')
}
