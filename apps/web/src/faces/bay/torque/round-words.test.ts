import { describe, expect, it } from 'vitest'
import { movedWords, sealWords } from './round-words.ts'

const figure = { value: 83, unit: 'lbf·ft' } as const

describe('a round in words', () => {
  it('says what the seal means', () => {
    expect(sealWords('full', figure, 5, [])).toBe('Round at 83 lbf·ft: 5 of 5 clicked · 0 moved')
    expect(sealWords('check', figure, 5, [2])).toBe('Check at 83 lbf·ft: 5 of 5 clicked · 1 moved')
  })

  it('calls the figure of the first round about half', () => {
    const half = { value: 45, unit: 'lbf·ft' } as const
    expect(sealWords('half', half, 5, [])).toBe('Round at 45 lbf·ft, about half: all 5 snug')
  })

  it('says what follows from a nut that moved', () => {
    expect(movedWords('again', [3], 'nut')).toMatch(/^nut 3 moved: the wheel starts its round/)
    expect(movedWords('check', [1, 4], 'bolt')).toMatch(/^bolt 1, 4 moved: the wheel goes back/)
    expect(movedWords('again', [], 'nut')).toBeNull()
  })
})
