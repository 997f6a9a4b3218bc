/**
 * Patterns by which wheels are rotated, as tire shops draw them and owner handbooks print them. Common practice, no
 * source: recalled from memory; the five-wheel patterns differ from maker to maker.
 */
import { cameFrom, wentTo } from '@bayledger/reckoning/rotation/moves'
import { patternMoves } from '@bayledger/reckoning/rotation/rotation-pattern'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published({ document: 'Patterns of tire rotation', certainty: 'common practice, no source' }, () => {
  it.each([
    ['front-to-back', 'LF', 'LR'],
    ['front-to-back', 'LR', 'LF'],
    ['front-to-back', 'RF', 'RR'],
    ['front-to-back', 'RR', 'RF'],
    ['rearward-cross', 'LR', 'LF'],
    ['rearward-cross', 'RR', 'RF'],
    ['rearward-cross', 'LF', 'RR'],
    ['rearward-cross', 'RF', 'LR'],
    ['forward-cross', 'LF', 'LR'],
    ['forward-cross', 'RF', 'RR'],
    ['forward-cross', 'LR', 'RF'],
    ['forward-cross', 'RR', 'LF'],
    ['cross', 'LF', 'RR'],
    ['cross', 'RF', 'LR'],
    ['cross', 'RR', 'LF'],
    ['cross', 'LR', 'RF'],
    ['side-to-side', 'LF', 'RF'],
    ['side-to-side', 'RF', 'LF'],
    ['side-to-side', 'LR', 'RR'],
    ['side-to-side', 'RR', 'LR'],
    ['five-rearward-cross', 'LR', 'LF'],
    ['five-rearward-cross', 'RR', 'RF'],
    ['five-rearward-cross', 'RF', 'LR'],
    ['five-rearward-cross', 'LF', 'SP'],
    ['five-rearward-cross', 'SP', 'RR'],
    ['five-forward-cross', 'LF', 'LR'],
    ['five-forward-cross', 'LR', 'RF'],
    ['five-forward-cross', 'RR', 'LF'],
    ['five-forward-cross', 'RF', 'SP'],
    ['five-forward-cross', 'SP', 'RR'],
  ] as const)('%s brings the wheel of %s to %s', (pattern, from, to) => {
    expect(wentTo(patternMoves(pattern), from)).toBe(to)
    expect(cameFrom(patternMoves(pattern), to)).toBe(from)
  })

  it.each(['front-to-back', 'rearward-cross', 'forward-cross', 'cross', 'side-to-side'] as const)(
    '%s leaves the spare where it is',
    (pattern) => {
      expect(wentTo(patternMoves(pattern), 'SP')).toBe('SP')
    },
  )
})
