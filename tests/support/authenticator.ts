import { createHmac } from 'node:crypto'

/** The bytes of a key in base 32, as an authenticator app reads it (RFC 4648). */
const keyOf = (written: string): Buffer => {
  const bits = Array.from(written.replaceAll(' ', ''), (sign) =>
    'ABCDEFGHIJKLMNOPQRSTUVWXYZ234567'.indexOf(sign).toString(2).padStart(5, '0'),
  ).join('')
  return Buffer.from((bits.match(/.{8}/g) ?? []).map((byte) => Number.parseInt(byte, 2)))
}

/** What an authenticator app shows at a time for a key in base 32 (RFC 6238), made apart from the program's own. */
export const codeShown = (key: string, at: Date): string => {
  const counter = new DataView(new ArrayBuffer(8))
  counter.setUint32(4, Math.floor(at.getTime() / 30_000))
  const mac = createHmac('sha1', keyOf(key)).update(new Uint8Array(counter.buffer)).digest('hex')
  const offset = 2 * Number.parseInt(mac.at(-1) ?? '0', 16)
  const number = Number.parseInt(mac.slice(offset, offset + 8), 16) % 2 ** 31
  return String(number).slice(-6).padStart(6, '0')
}
