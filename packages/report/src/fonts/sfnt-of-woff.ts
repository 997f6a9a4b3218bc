import { inflateSync } from 'node:zlib'

const woffSignature = 0x774f4646

/**
 * Unpacks a WOFF 1.0 file (W3C Recommendation "WOFF File Format 1.0") into the plain font inside it. The font
 * readers can unpack themselves, but slowly and again for every document.
 */
export const sfntOfWoff = (woff: Buffer): Buffer => {
  if (woff.readUInt32BE(0) !== woffSignature) throw new Error('This is not a WOFF 1.0 file.')
  const count = woff.readUInt16BE(12)
  const tables = Array.from({ length: count }, (_, index) => {
    const at = 44 + index * 20
    const offset = woff.readUInt32BE(at + 4)
    const packed = woff.subarray(offset, offset + woff.readUInt32BE(at + 8))
    const length = woff.readUInt32BE(at + 12)
    return {
      tag: woff.subarray(at, at + 4),
      checksum: woff.readUInt32BE(at + 16),
      bytes: packed.length < length ? inflateSync(packed) : packed,
    }
  })
  const exponent = Math.floor(Math.log2(count))
  const header = Buffer.alloc(12 + 16 * count)
  header.writeUInt32BE(woff.readUInt32BE(4), 0)
  header.writeUInt16BE(count, 4)
  header.writeUInt16BE(16 * 2 ** exponent, 6)
  header.writeUInt16BE(exponent, 8)
  header.writeUInt16BE(16 * count - 16 * 2 ** exponent, 10)
  let offset = header.length
  const bodies = tables.map(({ tag, checksum, bytes }, index) => {
    const at = 12 + index * 16
    tag.copy(header, at)
    header.writeUInt32BE(checksum, at + 4)
    header.writeUInt32BE(offset, at + 8)
    header.writeUInt32BE(bytes.length, at + 12)
    const padded = Buffer.concat([bytes, Buffer.alloc(-bytes.length & 3)])
    offset += padded.length
    return padded
  })
  return Buffer.concat([header, ...bodies])
}
