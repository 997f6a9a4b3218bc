import { readTireSize } from '../src/tire/read-tire-size.ts'
import type { MeasuredTireSize } from '../src/tire/tire-size.ts'

/** A size of which the diameter is known. */
export const measured = (text: string): MeasuredTireSize => {
  const read = readTireSize(text)
  if (!read.ok || read.value.kind === 'heightless') throw new RangeError(text)
  return read.value
}
