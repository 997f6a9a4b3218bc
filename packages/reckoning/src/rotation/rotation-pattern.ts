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

type Pattern = { readonly title: string; readonly moves: Moves }

/** Each place with the place that its new wheel comes from. */
const patterns: Readonly<Record<RotationPattern, Pattern>> = {
  'front-to-back': {
    title: 'front to back, each side by itself',
    moves: { LF: 'LR', LR: 'LF', RF: 'RR', RR: 'RF' },
  },
  'rearward-cross': {
    title: 'rear wheels straight forward, front wheels crossed to the rear',
    moves: { LF: 'LR', RF: 'RR', RR: 'LF', LR: 'RF' },
  },
  'forward-cross': {
    title: 'front wheels straight back, rear wheels crossed to the front',
    moves: { LR: 'LF', RR: 'RF', RF: 'LR', LF: 'RR' },
  },
  cross: { title: 'crossed at both axles', moves: { LF: 'RR', RR: 'LF', RF: 'LR', LR: 'RF' } },
  'side-to-side': { title: 'left and right exchanged', moves: { LF: 'RF', RF: 'LF', LR: 'RR', RR: 'LR' } },
  'five-rearward-cross': {
    title: 'five wheels, rear wheels straight forward, the spare to the right rear',
    moves: { LF: 'LR', RF: 'RR', LR: 'RF', SP: 'LF', RR: 'SP' },
  },
  'five-forward-cross': {
    title: 'five wheels, left front straight back, the spare to the right rear',
    moves: { LR: 'LF', RF: 'LR', LF: 'RR', SP: 'RF', RR: 'SP' },
  },
}

/**
 * The moves of a pattern. The vehicle maker's own pattern, where there is one, governs.
 *
 * @source Common practice, no source: as tire shops draw them. The two of five wheels differ from maker to maker.
 */
export const patternMoves = (pattern: RotationPattern): Moves => patterns[pattern].moves

/**
 * A pattern in words.
 *
 * @source This program's own words.
 */
export const patternTitle = (pattern: RotationPattern): string => patterns[pattern].title
