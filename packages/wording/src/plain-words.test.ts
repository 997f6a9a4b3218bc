import type { Figures } from '@bayledger/reckoning/diagnosis/diagnosis'
import { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'
import { describe, expect, it } from 'vitest'
import { customerSentence } from './customer-sentence.ts'
import { english } from './en/english.ts'
import { spanish } from './es/spanish.ts'
import type { Sentence } from './findings.ts'
import type { CustomerLanguage } from './language.ts'

/** Words that readers with simple English did not understand (line R7 of the trials), and the same in Spanish. */
const ofTheTrade = {
  en: /\b(demount|program(med)?|relearn|learns?|shop supplies|weekly|by hand|MHz|frequency|protocol|introduced|no longer answers?|holds only|calls? for|seepage|let go|withdraw|fleet contact|not yet proven|drop the file)\b/i,
  es: /\b(desmontar|program(ar|arlos?)|reaprender|reconozca|a mano|MHz|frecuencia|protocolo|presenta(do|rselos)|ya no contestan?|soltarse|sin comprobar|ponga el archivo)\b/i,
}

const figures: Figures = {
  ...{ value: 22, label: 35, difference: 13, perDay: 0.9, sensor: 26, warm: 28, point: 26.2, front: 36 },
  ...{ rear: 42, unit: 'psi', degrees: 54, temperatureUnit: 'F', tread: 2, tries: 3, days: 12, years: 7 },
  ...{ count: 2, has: 315, needs: 433.92 },
}

/** Every sentence that a finding may have on the phone, on page one and by telephone. */
const findingsOf = (language: CustomerLanguage): string[] =>
  FindingCode.options.flatMap((code) => {
    const { forms = {} }: Sentence = language.findingSentences[code]
    return ['', ...Object.keys(forms)].flatMap((form) =>
      [['LF'], ['LF', 'RR'], ['LF', 'RF', 'RR', 'LR']].map((wheels) =>
        customerSentence(language, code, { ...figures, wheels, form }),
      ),
    )
  })

const newest = (versions: Readonly<Record<number, string>>): string => Object.values(versions).at(-1) ?? ''

describe.each([english, spanish])('what a customer meets first, in $code,', (language) => {
  const { code, estimateLines, verdicts, bundles, customerCautions, customerPage, customerEstimate } =
    language

  it.each([
    ['an offer', [...Object.values(estimateLines.names), bundles.titles.relearn('')]],
    ['whether it may be driven', Object.values(verdicts.drive)],
    ['whether it is fixed', Object.values(verdicts.fixed)],
    ['a finding', findingsOf(language)],
    ['a caution', Object.values(customerCautions).map(newest)],
    [
      'the page',
      [
        customerPage.report.check.link,
        customerEstimate.sign.electronic.detail,
        ...Object.values(customerEstimate.sign.relations),
        ...Object.values(customerEstimate.answers),
      ],
    ],
  ])('%s is said without words of the trade', (_, said) => {
    expect(said.length).toBeGreaterThan(2)
    expect(said.filter((words) => ofTheTrade[code].test(words))).toEqual([])
  })
})

describe('readers were given the words that they understood', () => {
  const said = (code: FindingCode) => customerSentence(english, code, { ...figures, wheel: 'RR' })

  it('a sensor that does not answer does not work; one of another frequency is the wrong part', () => {
    expect(said('sensor-silent')).toContain('does not work. We tested it 3 times')
    expect(said('frequency-wrong')).toContain('is the wrong part for your car')
    expect(said('run-low-damage-possible')).toContain('has only 22.0 of 35 psi')
    expect(english.customerPage.sensorIs).toContain(
      'the small part in each wheel that tells your car its air',
    )
  })

  it('Later is Not today, and what it means stays apart from the sentence around it', () => {
    expect(english.customerEstimate.answers.deferred).toBe('Not today')
    expect(spanish.customerEstimate.answers.deferred).toBe('Hoy no')
    expect(
      spanish.nextSteps['deferred-work']({ code: 'deferred-work', day: '2027-03-01' }, nobody),
    ).toContain('“Hoy no” queda pendiente')
  })
})

const nobody = { telephone: null, person: null }
