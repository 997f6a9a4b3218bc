import { describe, expect, it } from 'vitest'
import { idsAtOnce, orderWords } from './ids-at-once.ts'

const four = ['LF', 'RF', 'RR', 'LR'] as const
const ids = { LF: '1A2B3C10', RF: '1A2B3C11', RR: '1A2B3C12', LR: '1A2B3C13' }

describe('all IDs in one text', () => {
  it.each([
    '1A2B3C10 1A2B3C11 1A2B3C12 1A2B3C13',
    '1A2B3C10\n1A2B3C11\n1A2B3C12\n1A2B3C13\n',
    'LF: 1A2B3C10; RF: 1A2B3C11; LR: 1A2B3C13; RR: 1A2B3C12',
    'lf=1A2B3C10, rr=1A2B3C12, rf=1A2B3C11, lr=1A2B3C13',
  ])('are read from %j', (text) => {
    expect(idsAtOnce(text, four)).toEqual({ ok: true, ids, notation: 'hex' })
  })

  it('may be fewer where each names its wheel', () => {
    expect(idsAtOnce('RF 1A2B3C11 LR 1A2B3C13', four)).toMatchObject({
      ok: true,
      ids: { RF: '1A2B3C11', LR: '1A2B3C13' },
    })
  })

  it('of digits alone leave open how they are written', () => {
    expect(idsAtOnce('439041040 439041041 439041042 439041043', four)).toMatchObject({
      ok: true,
      notation: null,
    })
  })

  it.each([
    ['1A2B3C10 1A2B3C11 1A2B3C12', /3 IDs for 4 wheels/],
    ['1A2B3C10 1A2B3C11 1A2B3C12 1A2B3C13 1A2B3C14', /5 IDs for 4 wheels/],
    ['', /0 IDs for 4 wheels/],
    ['LF 1A2B3C10 1A2B3C11', /"1A2B3C11" has no wheel before it/],
    ['LF 3C10 RF 1A2B3C11', /"3C10" is no whole sensor ID/],
    ['LF 1A2B3C10 SP 1A2B3C11', /stores no ID for SP/],
    ['LF 1A2B3C10 LF 1A2B3C11', /named twice/],
    ['the reader shows nothing today', /no whole sensor ID/],
  ])('are refused from %j', (text, says) => {
    expect(idsAtOnce(text, four)).toMatchObject({ ok: false, says: expect.stringMatching(says) })
  })

  it('without wheels come in reading order', () => {
    expect(orderWords(['SP', 'LR', 'LF', 'RR', 'RF'])).toBe('LF RF RR LR SP')
  })
})
