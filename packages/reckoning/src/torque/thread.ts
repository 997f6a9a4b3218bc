import { metersPerInch } from '../units/exact-factors.ts'
import {
  type Millimeters,
  millimeters,
  type SquareMillimeters,
  squareMillimeters,
} from '../units/measured.ts'

/** A screw thread by its two figures, in the system that its designation is written in. */
export type Thread =
  | { readonly system: 'metric'; readonly diameter: Millimeters; readonly pitch: Millimeters }
  | {
      readonly system: 'inch'
      /** Of an inch, in lowest terms: 7/16 is 7 and 16. */
      readonly numerator: number
      readonly denominator: number
      readonly threadsPerInch: number
    }

/**
 * A thread as it is written on a sheet: "M12×1.5", "1/2-20".
 *
 * @source The notation: ISO 965-1 and the ASME standard for unified inch threads, from memory.
 */
export const threadText = (thread: Thread): string =>
  thread.system === 'metric'
    ? `M${thread.diameter}×${thread.pitch}`
    : `${thread.numerator}/${thread.denominator}-${thread.threadsPerInch}`

/**
 * The outer diameter of a thread.
 *
 * @units Millimeters, from the inch where the thread is an inch thread. 1/2-20 is 12.7 mm.
 * @source The designation itself; the inch by definition.
 */
export const threadDiameter = (thread: Thread): Millimeters =>
  thread.system === 'metric'
    ? thread.diameter
    : millimeters((thread.numerator / thread.denominator) * millimetersPerInch)

/**
 * The area of a thread that carries tension.
 *
 * @formula As = π/4 · (d − 0.938194 P)² for metric threads; At = π/4 · (D − 0.9743/n)² in inches for inch threads.
 * @units Square millimeters for both. M12×1.5 has 88.1 mm², 1/2-20 has 103.2 mm² (0.1599 in²).
 * @source ISO 898-1 and the ASME standard for unified inch threads, both formulas from memory; their results agree with
 * tables that were read.
 */
export const stressArea = (thread: Thread): SquareMillimeters => {
  const core =
    thread.system === 'metric'
      ? thread.diameter - 0.938194 * thread.pitch
      : (thread.numerator / thread.denominator - 0.9743 / thread.threadsPerInch) * millimetersPerInch
  return squareMillimeters((Math.PI / 4) * core ** 2)
}

const millimetersPerInch = metersPerInch * 1_000
