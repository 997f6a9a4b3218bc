import { diagnosisOf } from '@bayledger/reckoning/diagnosis/cases/diagnosed-cases.test-support'
import { workedCases } from '@bayledger/reckoning/diagnosis/cases/worked-cases.test-support'
import { ReasonCode } from '@bayledger/reckoning/diagnosis/reason-codes'
import { describe, expect, it } from 'vitest'
import { english } from './en/english.ts'
import { reasonWords } from './reasons.ts'

const cold = { cold: 50.5, label: 35, unit: 'psi' }

/** The reasons that no worked case gives. */
const others: [ReasonCode, Record<string, string | number | string[]>, string][] = [
  ['temperature-out-of-range', {}, 'outside -40 to 257 °F (-40 to 125 °C)'],
  ['at-or-under-limit', { limit: 15, unit: 'psi' }, '15 psi or less'],
  ['run-low-dust', {}, 'rubber dust of a tire that ran low'],
  ['damaged-inside', {}, 'damaged inside'],
  ['stem-cracked', {}, 'the stem is cracked'],
  ['tire-damaged', { damage: ['bulge', 'cord-showing'] }, 'a bulge, cord showing'],
  [
    'cold-at-sidewall-maximum',
    { ...cold, sidewall: 51 },
    'cold it has 50.5 psi and should have 35 psi, set to the sidewall figure of 51 psi',
  ],
  ['code-stored-as', { class: 'receiver', text: 'C0775' }, 'a receiver code: C0775'],
  ['as-written', { words: 'as it was said then' }, 'as it was said then'],
]

describe('the words of a reason', () => {
  it.each(others)('%s with %j', (code, values, words) => {
    const reason = { field: 'wheels.LF.gauge', value: 22, unit: 'psi', code, values }
    expect(reasonWords(english, reason)).toBe(words)
  })

  it('are read here or from a worked case for every code there is', () => {
    const given = new Set<string>([
      ...others.map(([code]) => code),
      ...workedCases.flatMap((one) =>
        diagnosisOf(one).findings.flatMap(({ because }) => because.map(({ code }) => code)),
      ),
    ])
    expect(ReasonCode.options.filter((code) => !given.has(code))).toEqual([])
  })
})
