import { Zip, ZipDeflate, ZipPassThrough } from 'fflate'

export type ZipFile = {
  readonly path: string
  readonly bytes: Uint8Array
  /** Left out: it is packed as it is, because pictures and PDF are compressed already. */
  readonly isText?: true
}

/** A ZIP file in pieces, made while it is fetched: one of its files is in memory at a time. `at` is the time of each. */
export async function* zipPieces(files: AsyncIterable<ZipFile>, at: Date): AsyncGenerator<Uint8Array> {
  const made: Uint8Array[] = []
  const zip = new Zip((error, piece) => {
    if (error !== null) throw error
    made.push(piece)
  })
  for await (const { path, bytes, isText } of files) {
    const file = isText ? new ZipDeflate(path, { level: 6 }) : new ZipPassThrough(path)
    file.mtime = at
    zip.add(file)
    file.push(bytes, true)
    yield* made.splice(0)
  }
  zip.end()
  yield* made.splice(0)
}
