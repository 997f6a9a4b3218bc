import { BackupProblem } from './backup-problem.ts'
import { BLOCK_BYTES, paddingAfter, parseTarHeader, type TarHeader } from './tar-header.ts'

/** An entry whose content comes piece by piece; what is not read is passed over. */
export type ArchiveEntry = TarHeader & { readonly content: AsyncIterable<Uint8Array> }

/** The entries of an archive in their order, read as they come: a piece at a time is in memory. */
export async function* readTar(source: AsyncIterable<Uint8Array>): AsyncGenerator<ArchiveEntry> {
  const bytes = inPieces(source)
  while (true) {
    const header = parseTarHeader(await whole(bytes, BLOCK_BYTES))
    if (header === undefined) break
    let left = header.size
    const content = async function* () {
      while (left > 0) {
        const piece = await bytes(left)
        left -= piece.length
        yield piece
      }
    }
    yield { ...header, content: content() }
    for await (const _ of content());
    await whole(bytes, paddingAfter(header.size))
  }
  // To the very end: only there does the encryption show that nothing was cut off.
  while ((await bytes(BLOCK_BYTES, 'may end')).length > 0);
}

type Pieces = (most: number, atEnd?: 'may end') => Promise<Uint8Array>

/** Gives up to so many bytes at a call, at least one. */
function inPieces(source: AsyncIterable<Uint8Array>): Pieces {
  const iterator = source[Symbol.asyncIterator]()
  let rest: Uint8Array = new Uint8Array(0)
  return async (most, atEnd) => {
    while (rest.length === 0) {
      const { done, value } = await iterator.next()
      if (done === true && atEnd === 'may end') return rest
      if (done === true) throw new BackupProblem('The archive inside the backup ends too early.')
      rest = value
    }
    const piece = rest.subarray(0, most)
    rest = rest.subarray(piece.length)
    return piece
  }
}

async function whole(bytes: Pieces, length: number): Promise<Uint8Array> {
  const block = new Uint8Array(length)
  for (let filled = 0; filled < length; ) {
    const piece = await bytes(length - filled)
    block.set(piece, filled)
    filled += piece.length
  }
  return block
}
