import { BackupProblem } from './backup-problem.ts'

/** What a header of an archive says of the entry after it; a folder's size is 0. */
export type TarHeader = {
  readonly path: string
  readonly kind: 'file' | 'folder'
  readonly size: number
}

export const BLOCK_BYTES = 512
const LONGEST_NAME = 100
const LARGEST_FILE = 0o77777777777

/**
 * The header block of an entry, readable by its owner only.
 *
 * @source POSIX.1-1988 (IEEE 1003.1) `ustar` interchange format, as `pax` of POSIX.1-2017 describes it.
 */
export function tarHeader({ path, kind, size }: TarHeader): Uint8Array {
  if (Buffer.byteLength(path) > LONGEST_NAME || size > LARGEST_FILE)
    throw new BackupProblem(`${path} cannot be kept in a backup: its name or its content is too long.`)
  const block = Buffer.alloc(BLOCK_BYTES)
  const octal = (value: number, at: number, length: number) =>
    block.write(`${value.toString(8).padStart(length - 1, '0')}\0`, at, 'latin1')
  block.write(path, 0, 'utf8')
  octal(kind === 'folder' ? 0o700 : 0o600, 100, 8)
  octal(0, 108, 8)
  octal(0, 116, 8)
  octal(size, 124, 12)
  octal(0, 136, 12)
  block.write(kind === 'folder' ? '5' : '0', 156, 'latin1')
  block.write('ustar\u000000', 257, 'latin1')
  block.write(`${checksumOf(block).toString(8).padStart(6, '0')}\0 `, 148, 'latin1')
  return block
}

/** How many zero bytes follow a content of this size, so that the next header begins a block. */
export const paddingAfter = (size: number): number => (BLOCK_BYTES - (size % BLOCK_BYTES)) % BLOCK_BYTES

/** Reads a header back; undefined for a block of zeros, which ends an archive. */
export function parseTarHeader(bytes: Uint8Array): TarHeader | undefined {
  const block = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  if (block.every((byte) => byte === 0)) return undefined
  const text = (at: number, length: number) => block.toString('utf8', at, at + length).replace(/\0.*$/s, '')
  const kind = text(156, 1)
  if (
    text(257, 6) !== 'ustar' ||
    Number.parseInt(text(148, 8), 8) !== checksumOf(block) ||
    !['0', '5'].includes(kind)
  )
    throw new BackupProblem('The archive inside the backup cannot be read: it was not made by Bayledger.')
  return {
    path: text(0, LONGEST_NAME),
    kind: kind === '5' ? 'folder' : 'file',
    size: Number.parseInt(text(124, 12), 8),
  }
}

/** The sum of all bytes, with the checksum's own field read as spaces. */
function checksumOf(block: Uint8Array): number {
  return block.reduce((sum, byte, at) => sum + (at >= 148 && at < 156 ? 0x20 : byte), 0)
}
