/** A picture as it is shown: a JPEG without any data about place or camera. */
export type ViewCopy = { readonly bytes: Uint8Array; readonly width: number; readonly height: number }

/** A larger picture is not decoded: it would need several hundred megabytes of memory. */
export const mostPixels = 100_000_000

/** Of a view copy, in bytes. */
export const mostViewBytes = 300_000

/** Longest side in pixels and quality, in the order in which they are tried until the copy is small enough. */
const tries = [
  { side: 1_600, quality: 80 },
  { side: 1_600, quality: 60 },
  { side: 1_200, quality: 50 },
  { side: 800, quality: 40 },
  { side: 640, quality: 30 },
] as const

/**
 * Draws a picture anew, upright and at most 300 KB. `null` where the bytes are no whole JPEG, PNG or WebP picture, or
 * one of more than 100 million pixels.
 */
export const makeViewCopy = async (bytes: Uint8Array): Promise<ViewCopy | null> => {
  for (const { side, quality } of tries) {
    const copy = await drawnAnew(bytes, side, quality).catch(() => null)
    if (copy === null || copy.bytes.length <= mostViewBytes) return copy
  }
  return null
}

/** A copy for paper: smaller, since a report holds many. */
export const makePrintCopy = async (view: Uint8Array): Promise<ViewCopy | null> =>
  drawnAnew(view, 720, 60).catch(() => null)

let loading: ReturnType<typeof loadSharp> | null = null

/** Its libraries are loaded with the first picture. */
const loadSharp = async () => {
  const { default: sharp } = await import('sharp')
  // Photos are rare and large: nothing is kept between two of them, and the service's other threads go on.
  sharp.cache(false)
  sharp.concurrency(1)
  // Only what a tablet sends is ever decoded.
  sharp.block({ operation: ['VipsForeignLoad'] })
  sharp.unblock({
    operation: ['VipsForeignLoadJpegBuffer', 'VipsForeignLoadPngBuffer', 'VipsForeignLoadWebpBuffer'],
  })
  return sharp
}

const drawnAnew = async (bytes: Uint8Array, side: number, quality: number): Promise<ViewCopy> => {
  loading ??= loadSharp()
  const sharp = await loading
  const { data, info } = await sharp(bytes, { limitInputPixels: mostPixels, failOn: 'warning' })
    .autoOrient()
    .resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .jpeg({ quality })
    .toBuffer({ resolveWithObject: true })
  return { bytes: data, width: info.width, height: info.height }
}
