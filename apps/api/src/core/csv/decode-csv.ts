import { AppError } from '../app-error.ts'

/**
 * The bytes of a file, proven to be UTF-8. Throws `CSV_UNREADABLE` and says the line where they are not: a guess would
 * store wrong names without a word.
 */
export const utf8Of = (bytes: Uint8Array): Uint8Array => {
  if (isUtf16(bytes)) throw new AppError({ code: 'CSV_UNREADABLE', why: 'utf-16' })
  if (!isUtf8(bytes)) throw new AppError({ code: 'CSV_UNREADABLE', why: 'not-utf-8', line: wrongLine(bytes) })
  return bytes
}

/** By its byte-order mark, or by the zero byte beside the first letter. */
const isUtf16 = ([first, second]: Uint8Array): boolean =>
  (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff) || first === 0 || second === 0

const isUtf8 = (bytes: Uint8Array): boolean => {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    return true
  } catch {
    return false
  }
}

/** Counted from 1. No byte of a character of several bytes is a line feed, so lines can be tried one by one. */
const wrongLine = (bytes: Uint8Array): number => {
  let line = 1
  for (let at = 0; at < bytes.length; line += 1) {
    const end = bytes.indexOf(0x0a, at)
    if (!isUtf8(bytes.subarray(at, end === -1 ? bytes.length : end))) break
    if (end === -1) break
    at = end + 1
  }
  return line
}
