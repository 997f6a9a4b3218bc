import { createHash } from 'node:crypto'
import { crc32, deflateSync } from 'node:zlib'
import type { PayloadOf } from '@bayledger/ledger/registry'
import sharp from 'sharp'

/** A wheel with five nuts as a child would draw it: enough to see that a picture is a picture. */
const drawing = (width: number, height: number) => {
  const pixels = Buffer.alloc(width * height * 3)
  const radius = Math.min(width, height) * 0.42
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const [across, down] = [x - width / 2, y - height / 2]
      const distance = Math.hypot(across, down) / radius
      const nut = Math.cos(5 * Math.atan2(down, across)) > 0.9 && Math.abs(distance - 0.3) < 0.07
      const tone = distance > 1 ? 225 : distance > 0.6 ? 40 : nut ? 60 : 185
      pixels.fill(tone, (y * width + x) * 3, (y * width + x) * 3 + 3)
    }
  return sharp(pixels, { raw: { width, height, channels: 3 } })
}

/** A drawn JPEG; `withPlace` writes a camera's position into it. No real place: the middle of an ocean. */
export const drawnJpeg = async ({
  width = 1_200,
  height = 900,
  withPlace = false,
}: {
  readonly width?: number
  readonly height?: number
  readonly withPlace?: boolean
} = {}): Promise<Buffer> => {
  const picture = drawing(width, height).jpeg({ quality: 90 })
  return withPlace
    ? picture
        .withExif({
          IFD0: { Make: 'Test camera', Copyright: 'place within' },
          IFD3: {
            GPSLatitudeRef: 'S',
            GPSLatitude: '30/1 0/1 0/1',
            GPSLongitudeRef: 'W',
            GPSLongitude: '120/1 0/1 0/1',
          },
        })
        .toBuffer()
    : picture.toBuffer()
}

/** A picture of noise, which no coder makes small. */
export const noisyPng = async (side: number): Promise<Buffer> => {
  let seed = 20_260_112
  const pixels = Buffer.alloc(side * side * 3)
  for (let at = 0; at < pixels.length; at += 1) {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0
    pixels[at] = seed >>> 24
  }
  return sharp(pixels, { raw: { width: side, height: side, channels: 3 } })
    .png()
    .toBuffer()
}

/** A black picture of one bit a pixel: a small file that is large in memory (PNG, ISO/IEC 15948). */
export const blackPng = (side: number): Buffer => {
  const head = Buffer.alloc(13)
  head.writeUInt32BE(side, 0)
  head.writeUInt32BE(side, 4)
  head.writeUInt8(1, 8)
  const rows = deflateSync(Buffer.alloc(side * (1 + Math.ceil(side / 8))))
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])
  return Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', rows), chunk('IEND', Buffer.alloc(0))])
}

const chunk = (type: string, content: Buffer): Buffer => {
  const named = Buffer.concat([Buffer.from(type), content])
  const frame = Buffer.alloc(8)
  frame.writeUInt32BE(content.length, 0)
  frame.writeUInt32BE(crc32(named), 4)
  return Buffer.concat([frame.subarray(0, 4), named, frame.subarray(4)])
}

/** What is known of a picture's file: format, size in pixels, and whether it carries data of the camera. */
export const pictureFacts = async (bytes: Uint8Array) => {
  const { format, width, height, exif, xmp, iptc } = await sharp(bytes, {
    limitInputPixels: false,
  }).metadata()
  return { format, width, height, hasCameraData: [exif, xmp, iptc].some((data) => data !== undefined) }
}

/** The fact that a picture was attached, as a tablet writes it. */
export const attachedPhoto = (
  bytes: Uint8Array,
  rest: Partial<PayloadOf<'photo.attached'>> = {},
): PayloadOf<'photo.attached'> => ({
  wheel: 'LF',
  stepKey: null,
  subject: 'damage',
  digest: createHash('sha256').update(bytes).digest('hex'),
  byteLength: bytes.length,
  picture: { mediaType: 'image/jpeg', width: 1_200, height: 900, takenAt: '2026-01-12T16:39:00.000Z' },
  ...rest,
})
