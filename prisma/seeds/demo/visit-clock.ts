/** The clock of one visit: it only goes on, and closes for the night. */
export type VisitClock = {
  /** The time after so many seconds, as the calendar of the day takes it: past midnight the hours count on from 24. */
  readonly pass: (seconds: number) => string
  readonly now: () => string
  readonly hour: () => number
  /** Goes on when the shop opens on the next day. */
  readonly nextMorning: (seconds: number) => string
}

const daySeconds = 86_400
const opens = 7.5 * 3_600
const closes = 17 * 3_600

export const visitClock = (startSeconds: number): VisitClock => {
  let at = startSeconds
  const text = (): string => {
    const part = (value: number) => String(Math.floor(value)).padStart(2, '0')
    return `${part(at / 3_600)}:${part((at / 60) % 60)}:${part(at % 60)}`
  }
  const nextMorning = (seconds: number): string => {
    at = (Math.floor(at / daySeconds) + 1) * daySeconds + opens + Math.round(seconds)
    return text()
  }
  return {
    now: text,
    hour: () => (at % daySeconds) / 3_600,
    nextMorning,
    pass: (seconds) => {
      const next = at + Math.max(1, Math.round(seconds))
      if (next % daySeconds > closes) return nextMorning(seconds)
      at = next
      return text()
    },
  }
}
