import type { Diagnosis, Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import { describe, expect, it } from 'vitest'
import { reportContext } from '../../test-support/worked-context.ts'
import { digest, technician } from '../../test-support/worked-people.ts'
import { workedState } from '../../test-support/worked-state.ts'
import { findingsSection } from './findings-section.ts'
import { composePageOne } from './page-one.ts'

const issued = workedState.diagnosis
if (!issued) throw new RangeError('the worked state has findings')
const [silent] = issued.diagnosis.findings
if (!silent) throw new RangeError('the worked state has a silent sensor')

const stop: Finding = {
  ...silent,
  code: 'stem-leaking',
  wheels: ['LF'],
  kind: 'stop',
  stop: 'repair-before-release',
  customer: 'The valve stem on the left front wheel is leaking.',
}
const withDiagnosis = (change: Partial<Diagnosis>) => ({
  ...workedState,
  diagnosis: { ...issued, diagnosis: { ...issued.diagnosis, ...change } },
})
const differing = {
  ...workedState,
  diagnosis: {
    ...issued,
    confirmed: {
      agrees: false as const,
      ownFinding: 'A bent antenna ring',
      reason: digest('c'),
      written: issued.written,
    },
  },
}
const context = {
  ...reportContext,
  texts: { ...reportContext.texts, [digest('c')]: 'Seen with my own eyes.' },
}

const linesOf = (state: typeof workedState) =>
  findingsSection(state, context).blocks.flatMap((block) => (block.kind === 'findings' ? block.findings : []))

describe('the findings of a report', () => {
  it('stand in the order of reading, each with its title and how sure it is', () => {
    const findings = [...issued.diagnosis.findings].reverse()
    const lines = linesOf(withDiagnosis({ findings: [...findings, stop] }))
    expect(lines.map(({ severity }) => severity)).toEqual([
      'repair-before-release',
      'cause',
      'for-information',
      'not-checked',
      'could-not-be-checked',
    ])
    expect(lines[1]?.reasons[0]).toBe('Sensor does not answer. Firm.')
  })

  it('put what explains the light before what else was found, also where it must be asked first', () => {
    const also: Finding = { ...silent, code: 'interference-suspected', kind: 'also', customer: 'A charger.' }
    const asks: Finding = { ...silent, code: 'malfunction-unexplained', kind: 'ask', customer: 'A fault.' }
    const lines = linesOf(withDiagnosis({ primary: asks.code, findings: [also, asks] }))
    expect(lines.slice(0, 2).map(({ sentence }) => sentence)).toEqual(['A fault.', 'A charger.'])
  })

  it('tell a reason by where it was seen and what was seen, in words', () => {
    const because = [
      { field: 'wheels.RR.answer', value: 'silent', unit: null, says: 'at 3 tries' },
      { field: 'controlModule.codes', value: 'no-signal', unit: null, says: 'it misses it too' },
    ]
    const [line] = linesOf(withDiagnosis({ findings: [{ ...silent, because }] }))
    expect(line?.reasons.slice(1, 3)).toEqual([
      'Right rear sensor silent: at 3 tries',
      'Trouble codes stored in the vehicle no signal: it misses it too',
    ])
  })

  it('name a contradiction as one, in its own words', () => {
    const contradiction = {
      code: 'gauge-against-sensors',
      says: 'They differ by 6 psi.',
      do: 'Read again.',
    } as const
    const line = linesOf(withDiagnosis({ contradictions: [contradiction] })).find(
      ({ severity }) => severity === 'contradiction',
    )
    expect(line).toEqual({
      severity: 'contradiction',
      sentence: 'They differ by 6 psi.',
      reasons: ['Next: Read again.'],
    })
  })

  it('keep a technician’s own finding with its reason, and what was computed beside it', () => {
    const [paragraph] = findingsSection(differing, context).blocks
    const name = reportContext.staff[technician] ?? ''
    expect(paragraph?.kind === 'paragraph' && paragraph.text).toContain(
      `${name} does not agree and finds: A bent antenna ring. Reason: Seen with my own eyes.`,
    )
    expect(linesOf(differing)[0]?.severity).toBe('cause')
    expect(composePageOne(differing, context).found.sentence).toContain('A bent antenna ring')
  })

  it('put the stops before the cause on page one, with the number that proves the cause', () => {
    const { found } = composePageOne(
      withDiagnosis({ findings: [stop, ...issued.diagnosis.findings] }),
      context,
    )
    expect(found.severity).toBe('repair-before-release')
    expect(found.sentence).toBe(`${stop.customer} Cause: ${silent.customer}`)
    expect(found.proof?.figure).toEqual({ kind: 'figure', value: '3', unit: 'tries' })
  })
})
