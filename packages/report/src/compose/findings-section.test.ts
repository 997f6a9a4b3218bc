import type { Diagnosis, Finding, Reason } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { ComebackCause } from '@bayledger/reckoning/money/line-cover'
import { spanish } from '@bayledger/wording/es/spanish'
import { describe, expect, it } from 'vitest'
import { asLead, comebackUntil } from '../../../ledger/test-support/comeback.ts'
import { wordsOf } from '../../../ledger/test-support/seeded-ids.ts'
import { technician } from '../../../ledger/test-support/shop.ts'
import { reportContext } from '../../test-support/worked-context.ts'
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
  figures: { wheel: 'LF', form: 'leaks' },
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
      reason: wordsOf('why'),
      written: issued.written,
    },
  },
}
const context = {
  ...reportContext,
  texts: { ...reportContext.texts, [wordsOf('why')]: 'Seen with my own eyes.' },
}

const linesOf = (state: typeof workedState) =>
  findingsSection(state, context).blocks.flatMap((block) => (block.kind === 'findings' ? block.findings : []))

describe('the findings of a report', () => {
  it('are in reading order, each with its title and how sure it is', () => {
    const findings = [...issued.diagnosis.findings].reverse()
    const lines = linesOf(withDiagnosis({ findings: [...findings, stop] }))
    expect(lines.map(({ severity }) => severity)).toEqual([
      'repair-before-release',
      'cause',
      'for-information',
      'for-information',
      'not-checked',
      'could-not-be-checked',
    ])
    expect(lines[1]?.reasons[0]).toBe('Sensor does not answer. Firm.')
  })

  it.each(['warning-unexplained', 'malfunction-unexplained', 'system-kind-contradicted'] as const)(
    '%s is graded as at the desk: it explains nothing yet, and is no cause',
    (code) => {
      const asked: Finding = { ...silent, code, kind: 'ask', wheels: [], figures: {}, because: [] }
      const [line] = linesOf(withDiagnosis({ primary: code, findings: [asked] }))
      expect(line?.severity).toBe('unexplained')
      const [part] = composePageOne(withDiagnosis({ primary: code, findings: [asked] }), context).found
      expect(part?.word).toBe('Not explained yet')
    },
  )

  it('put what explains the light before what else was found, also where it must be asked first', () => {
    const also: Finding = { ...silent, code: 'interference-suspected', kind: 'also' }
    const asks: Finding = { ...silent, code: 'malfunction-unexplained', kind: 'ask' }
    const lines = linesOf(withDiagnosis({ primary: asks.code, findings: [also, asks] }))
    expect(lines.slice(0, 2).map(({ sentence }) => sentence)).toEqual([
      expect.stringContaining('the car reports a fault'),
      expect.stringContaining('may disturb the sensors'),
    ])
  })

  it('give a reason as where and what was seen, in words', () => {
    const because = [
      { field: 'wheels.RR.answer', value: 'silent', unit: null, code: 'silent', values: { tries: 3 } },
      {
        field: 'controlModule.codes',
        value: 'no-signal',
        unit: null,
        code: 'vehicle-misses-it-too',
        values: { wheel: 'RR' },
      },
    ] satisfies Reason[]
    const [line] = linesOf(withDiagnosis({ findings: [{ ...silent, because }] }))
    expect(line?.reasons.slice(1, 3)).toEqual([
      'Right rear sensor: silent at 3 tries',
      'Trouble codes stored in the vehicle no signal: the vehicle misses the right rear too',
    ])
  })

  it('name a contradiction as one, in its own words', () => {
    const contradiction = { code: 'gauge-against-sensors', values: {} } as const
    const line = linesOf(withDiagnosis({ contradictions: [contradiction] })).find(
      ({ severity }) => severity === 'contradiction',
    )
    expect(line).toEqual({
      severity: 'contradiction',
      sentence: 'Our gauge is the odd one out.',
      reasons: ['Next: Take every reading again with the master gauge.'],
    })
  })

  it('print what an older diagnosis said only in words as those words', () => {
    const asWritten: Finding = {
      ...silent,
      because: [
        {
          field: 'wheels.RR.answer',
          value: 'silent',
          unit: null,
          code: 'as-written',
          values: { words: 'no answer' },
        },
      ],
      asWritten: { next: 'Fit a new one.', customer: 'Your sensor is dead.' },
    }
    const contradiction = {
      code: 'gauge-against-sensors',
      values: {},
      asWritten: { says: 'They differ.', do: 'Read again.' },
    } as const
    const lines = linesOf(withDiagnosis({ findings: [asWritten], contradictions: [contradiction] }))
    expect(lines[0]).toMatchObject({
      sentence: 'Your sensor is dead.',
      reasons: [expect.anything(), 'Right rear sensor silent: no answer', 'Next: Fit a new one.'],
    })
    expect(lines[1]).toMatchObject({ sentence: 'They differ.', reasons: ['Next: Read again.'] })
  })

  it('keep a technician’s own finding with its reason, and what was computed beside it', () => {
    const [paragraph] = findingsSection(differing, context).blocks
    const name = reportContext.staff[technician.id] ?? ''
    expect(paragraph?.kind === 'paragraph' && paragraph.text).toContain(
      `${name} does not agree and finds: A bent antenna ring. Reason: Seen with my own eyes.`,
    )
    expect(linesOf(differing)[0]?.severity).toBe('cause')
    expect(composePageOne(differing, context).found[0]?.sentence).toContain('A bent antenna ring')
  })

  it('put the danger and the cause of the light on page one as two things, the danger first', () => {
    const { found } = composePageOne(
      withDiagnosis({ findings: [stop, ...issued.diagnosis.findings] }),
      context,
    )
    expect(found.map(({ severity, sentence }) => [severity, sentence])).toEqual([
      [
        'repair-before-release',
        'The valve stem on the left front wheel is leaking. It can fail without warning. Please have it replaced before you drive.',
      ],
      [
        'cause',
        'The sensor in the right rear wheel does not work. We tested it 3 times; the others answered.',
      ],
    ])
    expect(found[0]?.remedy).toEqual([
      'What fixes it: a repair. No price was given; we price it when you ask.',
    ])
  })

  describe('of a comeback', () => {
    const textsOf = (state: typeof workedState, language = reportContext.language) =>
      findingsSection(state, { ...context, language }).blocks.flatMap((block) =>
        block.kind === 'paragraph' ? [block.text] : [],
      )
    const judged = (cause: ComebackCause, words: string | null = null) => {
      const pen = comebackUntil('confirmed')
      pen.write('comeback.judged', { cause, words }, asLead)
      return pen.state()
    }

    it('say why the vehicle came back, in both languages, with the entry that says so', () => {
      const state = judged('part-failed')
      expect(textsOf(state)).toContain(
        'This vehicle came back after work that we did. Why: a part that we put in does not work any more.',
      )
      expect(textsOf(state, spanish)).toContain(
        'Este vehículo regresó después de un trabajo que hicimos. Por qué: una pieza que pusimos ya no funciona.',
      )
      expect(findingsSection(state, context).blocks).toContainEqual(
        expect.objectContaining({ kind: 'paragraph', entry: state.comeback?.written.seq }),
      )
    })

    it('say something else in the words of whoever recorded it, and keep the shop’s note beside any other cause', () => {
      expect(textsOf(judged('something-else', wordsOf('why'))).at(-1)).toMatch(
        /Why: Seen with my own eyes\.$/,
      )
      for (const cause of ['workmanship', 'part-failed', 'new-damage', 'not-found'] as const)
        expect(textsOf(judged(cause, wordsOf('why'))).join()).not.toContain('Seen with my own eyes')
    })

    it('say that nobody recorded why, also before there are findings, and nothing of another order', () => {
      const says = 'This vehicle came back after work that we did. Why is not recorded.'
      expect(textsOf(comebackUntil('confirmed').state())).toContain(says)
      expect(textsOf(comebackUntil('written-up').state())).toContain(says)
      expect(textsOf(workedState).join()).not.toContain('came back')
    })
  })
})
