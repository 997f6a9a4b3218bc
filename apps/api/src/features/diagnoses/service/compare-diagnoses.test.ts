import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Evidence } from '@bayledger/reckoning/evidence/evidence'
import { describe, expect, it } from 'vitest'
import { differencesBetween } from './compare-diagnoses.ts'

const evidence: Evidence = {
  units: { pressure: 'psi', temperature: 'F', altitude: 'ft' },
  vehicle: {
    system: 'direct',
    spare: 'none',
    placard: { front: 35, rear: 35, verified: true },
    loadClass: { front: 'SL', rear: 'SL' },
  },
  light: { lampCheck: 'lights', behavior: 'solid' },
  wheels: { LF: { gauge: 22 }, RF: { gauge: 35 }, RR: { gauge: 35 }, LR: { gauge: 35 } },
  surroundings: { outdoor: 68, tires: 'cold' },
}
const issued = diagnose(evidence)
const changed = (change: Partial<Diagnosis>): Diagnosis => ({ ...issued, ...change })
const [first] = issued.findings
if (!first) throw new RangeError('a tire at 22 psi is found low')

describe('what today’s rules say differently', () => {
  it('is nothing where the number of the rule set alone went up', () => {
    expect(differencesBetween(issued, changed({ ruleSet: '99' }))).toEqual([])
  })

  it('names another cause, and that there is none', () => {
    expect(issued.primary).toBe('tire-low')
    expect(differencesBetween(issued, changed({ primary: null }))).toEqual([
      'The cause was “Tire low”; today it is not named.',
    ])
  })

  it('names what is found in one of them only, with its wheels', () => {
    const others = issued.findings.filter((finding) => finding.code !== 'tire-low')
    expect(differencesBetween(issued, changed({ findings: others }))).toEqual([
      'No longer found today: Tire low, left front.',
    ])
    expect(differencesBetween(changed({ findings: others }), issued)).toEqual([
      'Found today only: Tire low, left front.',
    ])
  })

  it.each([
    [{ wheels: [] }, 'no wheel'],
    [{ confidence: 'possible' }, 'possible'],
    [{ offers: ['tire', 'leak-find'] }, 'tire, finding the leak'],
    [{ holds: ['road', 'hand-back'] }, 'the road, the hand-back'],
    [{ kind: 'note' }, 'note'],
  ] as const)('says what changed of a finding: %j', (change, words) => {
    const other = { ...first, ...change } as typeof first
    const differences = differencesBetween(
      issued,
      changed({ findings: [other, ...issued.findings.slice(1)] }),
    )
    expect(differences).toHaveLength(1)
    expect(differences[0]).toContain(`today ${words}.`)
  })

  it('distinguishes changed reasons from changed consequences', () => {
    const other = { ...first, figures: { ...first.figures, value: 21 } }
    expect(differencesBetween(issued, changed({ findings: [other, ...issued.findings.slice(1)] }))).toEqual([
      expect.stringContaining('the reasons differ, what follows does not'),
    ])
  })

  it('names contradictions of one of them, and lists that differ', () => {
    const contradiction = { code: 'gauge-against-sensors', values: {} } as const
    const today = changed({ contradictions: [contradiction], unchecked: [], nextChecks: [] })
    expect(differencesBetween(issued, today)).toEqual([
      'A contradiction today only: Our gauge is the odd one out.',
      'What counts as not checked differs.',
      'What is worth checking next differs.',
    ])
  })

  it('is nothing where the issued one holds words and the same facts', () => {
    const inWords = changed({
      findings: issued.findings.map((finding) => ({
        ...finding,
        because: finding.because.map((reason) => ({
          ...reason,
          code: 'as-written' as const,
          values: { words: 'It is low.' },
        })),
        asWritten: { next: 'Find the leak.', customer: 'Your tire is low.' },
      })),
      nextChecks: issued.nextChecks.map((check) => ({ ...check, asWritten: { ask: 'Look.' } })),
    })
    expect(differencesBetween(inWords, issued)).toEqual([])
  })
})
