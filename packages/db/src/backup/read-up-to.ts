import { type FileHandle, open } from 'node:fs/promises'

const PIECE_BYTES = 256 * 1024

/** The first `bytes` of a file, piece by piece; fewer where it is shorter. Rejects with ENOENT where it is gone. */
export async function* readUpTo(file: string, bytes: number): AsyncGenerator<Uint8Array> {
  const handle: FileHandle = await open(file, 'r')
  try {
    for (let at = 0; at < bytes; ) {
      const piece = Buffer.allocUnsafe(Math.min(PIECE_BYTES, bytes - at))
      const { bytesRead } = await handle.read(piece, 0, piece.length, at)
      if (bytesRead === 0) return
      at += bytesRead
      yield piece.subarray(0, bytesRead)
    }
  } finally {
    await handle.close()
  }
}
