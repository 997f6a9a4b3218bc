/** A place in PostgreSQL's log, in bytes from its beginning. */
export type LogPosition = bigint

/** Reads a place as PostgreSQL writes it: "0/3000148". */
export function parsePosition(text: string): LogPosition {
  const [high = '0', low = '0'] = text.split('/')
  return (BigInt(`0x${high}`) << 32n) + BigInt(`0x${low}`)
}

/** One file of the log: its timeline and its number from the beginning. */
export type Segment = { readonly timeline: number; readonly number: bigint }

/** The segment that holds the byte at a position. */
export function segmentAt(timeline: number, position: LogPosition, segmentBytes: number): Segment {
  return { timeline, number: position / BigInt(segmentBytes) }
}

const hex = (value: bigint) => value.toString(16).toUpperCase().padStart(8, '0')
const perName = (segmentBytes: number) => 0x1_0000_0000n / BigInt(segmentBytes)

/**
 * The name of a segment's file: timeline, and its number in two parts, eight hexadecimal digits each.
 *
 * @source PostgreSQL manual, 28.6 WAL Internals.
 */
export function segmentName({ timeline, number }: Segment, segmentBytes: number): string {
  const files = perName(segmentBytes)
  return `${hex(BigInt(timeline))}${hex(number / files)}${hex(number % files)}`
}

/** Reads a segment back from its name. */
export function parseSegmentName(name: string, segmentBytes: number): Segment {
  const part = (at: number) => BigInt(`0x${name.slice(at, at + 8)}`)
  return { timeline: Number(part(0)), number: part(8) * perName(segmentBytes) + part(16) }
}

export const segmentPattern = /^[0-9A-F]{24}$/
