import { describe, expect, it } from 'vitest'
import { FindingCode, groupOf } from '../finding-codes.ts'
import { precedence, rankOf } from './precedence.ts'

describe('the precedence of findings', () => {
  it('names every finding once', () => {
    expect([...precedence].sort()).toEqual([...FindingCode.options].sort())
  })

  it('goes from safety to advice (the trade’s order: common practice, no source)', () => {
    const groups = precedence
      .filter((code) => code !== 'telltale-dark' && code !== 'no-sensor-on-arrival')
      .map(groupOf)
    expect(groups.filter((group, at) => group !== groups[at - 1])).toEqual([
      'stop',
      'ask',
      'system',
      'pressure',
      'sensor',
      'identity',
      'vehicle',
      'surroundings',
      'history',
      'advice',
    ])
  })

  it('puts facts as received right after what to check first', () => {
    const asked = precedence.filter((code) => ['stop', 'ask'].includes(groupOf(code))).length
    expect(precedence.slice(asked, asked + 2)).toEqual(['telltale-dark', 'no-sensor-on-arrival'])
  })

  it('is a rank for each', () => {
    precedence.forEach((code, at) => {
      expect(rankOf(code)).toBe(at)
    })
  })
})
