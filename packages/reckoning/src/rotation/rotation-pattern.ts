import * as z from 'zod/mini'
import type { Moves } from './moves.ts'

/** The patterns by which the trade rotates wheels. */
export const RotationPattern = z.enum([
  'front-to-back',
  'rearward-cross',
  'forward-cross',
  'cross',
  'side-to-side',
  'five-rearward-cross',
  'five-forward-cross',
])
export type RotationPattern = z.infer<typeof RotationPattern>

/** Each place with the place that its new wheel comes from. */
const patterns: Readonly<Record<RotationPattern, Moves>> = {
  'front-to-back': { LF: 'LR', LR: 'LF', RF: 'RR', RR: 'RF' },
  'rearward-cross': { LF: 'LR', RF: 'RR', RR: 'LF', LR: 'RF' },
  'forward-cross': { LR: 'LF', RR: 'RF', RF: 'LR', LF: 'RR' },
  cross: { LF: 'RR', RR: 'LF', RF: 'LR', LR: 'RF' },
  'side-to-side': { LF: 'RF', RF: 'LF', LR: 'RR', RR: 'LR' },
  'five-rearward-cross': { LF: 'LR', RF: 'RR', LR: 'RF', SP: 'LF', RR: 'SP' },
  'five-forward-cross': { LR: 'LF', RF: 'LR', LF: 'RR', SP: 'RF', RR: 'SP' },
}

/**
 * The moves of a pattern. The vehicle maker's own pattern, where there is one, governs.
 *
 * @source Common practice, no source: as tire shops draw them. The two of five wheels differ from maker to maker.
 */
export const patternMoves = (pattern: RotationPattern): Moves => patterns[pattern]
