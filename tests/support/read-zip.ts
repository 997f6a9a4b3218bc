import { crc32, inflateRawSync } from 'node:zlib'

/**
 * The files of a ZIP file by their paths, read by its central directory and held against their CRC-32, as the format's
 * specification (APPNOTE.TXT 6.3, 4.3.12 and 4.3.16) lays it out. It shares no code with what writes such files here.
 */
export const readZip = (zip: Buffer): ReadonlyMap<string, Buffer> => {
  const end = zip.lastIndexOf(Buffer.from([0x50, 0x4b, 5, 6]))
  const files = new Map<string, Buffer>()
  let at = zip.readUInt32LE(end + 16)
  for (let left = zip.readUInt16LE(end + 10); left > 0; left -= 1) {
    const [method, sum, length] = [at + 10, at + 16, at + 20].map((place, index) =>
      index === 0 ? zip.readUInt16LE(place) : zip.readUInt32LE(place),
    )
    const [name, extra, comment] = [28, 30, 32].map((place) => zip.readUInt16LE(at + place))
    const path = zip.toString('utf8', at + 46, at + 46 + (name ?? 0))
    const local = zip.readUInt32LE(at + 42)
    const begin = local + 30 + zip.readUInt16LE(local + 26) + zip.readUInt16LE(local + 28)
    const packed = zip.subarray(begin, begin + (length ?? 0))
    const bytes = method === 0 ? packed : inflateRawSync(packed)
    if (crc32(bytes) !== sum) throw new Error(`${path} is not what it was`)
    files.set(path, bytes)
    at += 46 + (name ?? 0) + (extra ?? 0) + (comment ?? 0)
  }
  return files
}
