import { type Reading, refused, taken } from '../reading.ts'
import { millimeters } from '../units/measured.ts'
import { threadWords } from '../words/typed-text.ts'
import type { Thread } from './thread.ts'

export type ThreadFault = 'not-a-thread' | 'diameter' | 'pitch'

/**
 * Reads the designation of a thread: metric with its pitch ("M12×1.5", "m12 x 1,5") or a fraction of an inch with its
 * threads an inch ("1/2-20", `7/16"-20 UNF`). The pitch has to be there: M12 alone has three in use on wheels.
 *
 * @limits Metric: M3 to M36, a pitch of 0.35 to 4 mm and at most a fourth of the diameter. Inch: halves to 32nds under
 * one inch, 1/8 at least, with 6 to 48 threads an inch.
 * @source The notation: ISO 965-1 and the ASME standard for unified inch threads, from memory. The limits: this
 * program's own rule.
 */
export const readThread = (typed: string): Reading<Thread, ThreadFault> => {
  const metric = /^\s*M\s*(\d{1,2}(?:[.,]\d)?)\s*[x×*-]\s*(\d(?:[.,]\d{1,2})?)\s*$/i.exec(typed)
  if (metric) return metricThread(typed, decimal(metric[1]), decimal(metric[2]))
  const inch =
    /^\s*(\d{1,2})\s*\/\s*(\d{1,2})\s*(?:"|″|in\.?)?\s*[-–x×]\s*(\d{1,2})\s*(?:UN[CF]?)?\s*$/i.exec(typed)
  if (inch) return inchThread(typed, Number(inch[1]), Number(inch[2]), Number(inch[3]))
  return refused('not-a-thread', typed, threadWords.notAThread)
}

const metricThread = (typed: string, diameter: number, pitch: number): Reading<Thread, ThreadFault> => {
  if (diameter < 3 || diameter > 36) return refused('diameter', typed, threadWords.metricDiameter)
  if (pitch < 0.35 || pitch > 4 || pitch > diameter / 4)
    return refused('pitch', typed, threadWords.metricPitch(Math.min(4, diameter / 4), diameter))
  return taken({ system: 'metric', diameter: millimeters(diameter), pitch: millimeters(pitch) })
}

const inchThread = (
  typed: string,
  above: number,
  below: number,
  threadsPerInch: number,
): Reading<Thread, ThreadFault> => {
  if (![2, 4, 8, 16, 32].includes(below) || above * 8 < below || above >= below)
    return refused('diameter', typed, threadWords.inchDiameter)
  if (threadsPerInch < 6 || threadsPerInch > 48) return refused('pitch', typed, threadWords.inchPitch)
  const shared = commonDivisor(above, below)
  return taken({ system: 'inch', numerator: above / shared, denominator: below / shared, threadsPerInch })
}

const decimal = (digits: string | undefined): number => Number((digits ?? '').replace(',', '.'))

const commonDivisor = (one: number, other: number): number =>
  other === 0 ? one : commonDivisor(other, one % other)
