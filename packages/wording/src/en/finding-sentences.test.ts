import type { Figures } from '@bayledger/reckoning/diagnosis/diagnosis'
import { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'
import { describe, expect, it } from 'vitest'
import { customerSentence } from '../customer-sentence.ts'
import type { Sentence, Wordings } from '../findings.ts'
import { findingSentences } from './finding-sentences.ts'
import { wheels as wheelsWording } from './wheels.ts'

const sentence = (code: FindingCode, figures: Figures): string =>
  customerSentence({ findingSentences, wheels: wheelsWording }, code, figures)

const sentences: Readonly<Record<FindingCode, Sentence>> = findingSentences

/** What the slots of a sentence hold at their longest. */
const figures = {
  ...{
    value: 22,
    label: 35,
    difference: 13,
    perDay: 0.9,
    sensor: 26,
    warm: 28,
    point: 26.2,
    front: 36,
    rear: 42,
    unit: 'psi',
  },
  ...{
    degrees: 54,
    temperatureUnit: 'F',
    tread: 2,
    tries: 3,
    days: 12,
    years: 7,
    count: 2,
    has: 315,
    needs: 433.92,
  },
}

const wheelChoices = [
  { wheel: 'LF' },
  { wheels: ['LF', 'RF'] },
  { wheels: ['LF', 'RF', 'RR'] },
  { wheels: ['LF', 'RF', 'RR', 'LR'] },
]

describe('the English sentences', () => {
  for (const code of FindingCode.options) {
    it(`${code}: every wording has at most 25 words and no empty place`, () => {
      const forms = ['', ...Object.keys(sentences[code].forms ?? {})]
      for (const form of forms) {
        for (const wheels of wheelChoices) {
          const text = sentence(code, { ...figures, ...wheels, form })
          expect(text.split(/\s+/).length, text).toBeLessThanOrEqual(25)
          expect(text, text).not.toMatch(/[{}]|undefined| {2}| [.,;]/)
          expect(text.charAt(0)).toBe(text.charAt(0).toUpperCase())
        }
      }
    })
  }

  it('show a pressure as a gauge of its unit does', () => {
    const said = (unit: string, value: number, label: number) =>
      sentence('tire-low', { wheel: 'LF', value, label, unit })
    expect(said('psi', 22, 35)).toContain('has 22.0 psi; by the door label it should have 35.')
    expect(said('kPa', 151.7, 240)).toContain('has 152 kPa; by the door label it should have 240.')
    expect(said('bar', 1.517, 2.4)).toContain('has 1.52 bar; by the door label it should have 2.4.')
  })

  it('name wheels in reading order, and all four as all four', () => {
    const said = (wheels: string[]) => sentence('no-sensor-on-arrival', { wheels })
    expect(said(['LR', 'LF'])).toBe('These wheels had no sensor when they arrived: left front and left rear.')
    expect(said(['LF', 'RF', 'RR', 'LR'])).toBe('These wheels had no sensor when they arrived: all four.')
  })

  it('leave no part of a wording unused: each differs from the others of its sentence', () => {
    for (const one of Object.values(sentences)) {
      const wordings: Wordings[] = [one, ...Object.values(one.forms ?? {})]
      for (const { one, many } of wordings) expect(one).not.toBe(many)
    }
  })
})
