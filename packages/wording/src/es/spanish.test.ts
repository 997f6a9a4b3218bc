import { customerCautionVersions } from '@bayledger/reckoning/cautions/customer-cautions'
import type { Figures } from '@bayledger/reckoning/diagnosis/diagnosis'
import { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'
import { describe, expect, it } from 'vitest'
import { faultOf } from '../../test-support/plain-sentence.ts'
import { saidByCode } from '../../test-support/said-by-code.ts'
import { customerSentence } from '../customer-sentence.ts'
import { english } from '../en/english.ts'
import type { Sentence, Wordings } from '../findings.ts'
import { spanish } from './spanish.ts'

/** Codes whose word is the same in both languages. */
const sameInBoth = new Set([
  'photos.subjects.sensor',
  'fields.answered.answer',
  'observations.decimal',
  'report.findings.values.decimal',
  ...['tires', 'valve', 'stem', 'tireDamage', 'fastenerDamage', 'inside', 'codes'].map(
    (field) => `report.seen.${field}.decimal`,
  ),
  'report.answers.answer.declined',
  'report.findings.values.no',
  'customerEstimate.answers.declined',
  'report.readings.readings.columns.sensor',
  'customerPage.report.check.after',
  // Proper names and an address.
  ...['name', 'vehicle', 'link'].map((fact) => `messages.example.${fact}`),
])

const inEnglish = saidByCode(english)
const inSpanish = saidByCode(spanish)

describe('Spanish', () => {
  it('says another thing than English for every code but those that are named here', () => {
    const same = Object.entries(inSpanish).filter(
      ([code, words]) => words === inEnglish[code] && !sameInBoth.has(code),
    )
    expect(same).toEqual([])
    expect(Object.keys(inSpanish).length).toBeGreaterThan(900)
  })

  it('has in every sentence of a finding the same figures as the English one', () => {
    const slots = ({ one, many = '', all = '' }: Wordings): string[] =>
      [one, many, all].map((template) => [...new Set(template.match(/\{[\w:]+\}/g))].toSorted().join(' '))
    for (const code of FindingCode.options) {
      const [es, en]: Sentence[] = [spanish.findingSentences[code], english.findingSentences[code]]
      expect(slots(es as Sentence), code).toEqual(slots(en as Sentence))
      for (const [form, wordings] of Object.entries(en?.forms ?? {}))
        expect(slots(es?.forms?.[form] as Wordings), `${code} ${form}`).toEqual(slots(wordings))
    }
  })

  it('has no sentence of a finding of more than 32 words, and no empty place', () => {
    const figures: Figures = {
      ...{ value: 22, label: 35, difference: 13, perDay: 0.9, sensor: 26, warm: 28, point: 26.2, front: 36 },
      ...{ rear: 42, unit: 'psi', degrees: 54, temperatureUnit: 'F', tread: 2, tries: 3, days: 12, years: 7 },
      ...{ count: 2, has: 315, needs: 433.92 },
    }
    for (const code of FindingCode.options) {
      const { forms = {} }: Sentence = spanish.findingSentences[code]
      for (const form of ['', ...Object.keys(forms)])
        for (const wheels of [['LF'], ['LF', 'SP'], ['LF', 'RF', 'RR'], ['LF', 'RF', 'RR', 'LR']]) {
          const said = customerSentence(spanish, code, { ...figures, wheels, form })
          expect(said.split(/\s+/).length, said).toBeLessThanOrEqual(32)
          expect(said, said).not.toMatch(/[{}]|undefined| {2}| [.,;]/)
          expect(faultOf(said), said).toBeNull()
        }
    }
  })

  it('says every caution in sentences of 28 words or fewer', () => {
    const all = Object.entries(customerCautionVersions).flatMap(([number, versions]) =>
      versions.map(
        (version) =>
          (spanish.customerCautions as Record<string, Readonly<Record<number, string>>>)[number]?.[version],
      ),
    )
    for (const sentence of all.flatMap((words) => (words ?? '').split(/(?<=[.?!])\s+/))) {
      expect(sentence.split(/\s+/).length, sentence).toBeGreaterThan(1)
      expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(28)
    }
  })

  it('opens every question and every exclamation with its own mark', () => {
    for (const [code, words] of Object.entries(inSpanish))
      expect(words.split('?').length, code).toBe(words.split('¿').length)
  })

  it('says "usted" throughout', () => {
    const familiar = /\b(tú|tu|tus|ti|contigo|puedes|tienes|quieres|debes|maneja tu)\b/i
    expect(Object.entries(inSpanish).filter(([, words]) => familiar.test(words))).toEqual([])
  })

  it('names wheels as an ear hears them', () => {
    const said = (wheels: string[]) => customerSentence(spanish, 'no-sensor-on-arrival', { wheels })
    expect(said(['LR', 'LF'])).toBe(
      'Estas ruedas no tenían sensor cuando llegaron: delantera izquierda y trasera izquierda.',
    )
    expect(said(['SP'])).toBe('La rueda de repuesto no tenía sensor cuando llegó.')
    expect(spanish.bundles.titles.tire('de repuesto')).toBe('Llanta nueva: de repuesto')
  })

  it('joins a list with "e" where the next word begins with the sound of an i', () => {
    const { damages } = spanish.report.arrival
    expect(damages(['bola', 'corte'])).toBe('bola y corte')
    expect(damages(['bola', 'interior roto'])).toBe('bola e interior roto')
    expect(damages(['corte', 'hielo'])).toBe('corte y hielo')
  })

  it('gives days and numbers as Spanish speakers in the United States write them', () => {
    const { nextSteps } = spanish
    expect(nextSteps['deferred-work']({ code: 'deferred-work', day: '2027-03-01' }, noContact)).toBe(
      'Lo que contestó con “Hoy no” queda pendiente para el 1 de marzo de 2027.',
    )
    const retorque = {
      code: 'retorque',
      miles: { from: 50, to: 100 },
      at: { from: { value: 48290.4, unit: 'mi' }, to: { value: 48340.4, unit: 'mi' } },
    } as const
    expect(nextSteps.retorque(retorque, noContact)).toBe(
      'Después de 50 a 100 millas (48,290 a 48,340 mi): regrese sin cita y revisamos gratis el apriete de las ruedas.',
    )
  })

  it('reads the consent out whole', () => {
    const offers = [{ title: 'Llanta nueva: de repuesto', price: '$120.00', insteadOf: null, cover: null }]
    const said = {
      ...{ vehicle: 'auto gris', found: ['La llanta está vieja.'], offers, ready: '3:40 PM' },
      ...{ agreed: null, look: null, total: '$0.00', withBefore: null, takenBack: [] },
    }
    const agreed = { ...said, agreed: ['Llanta nueva'], total: '$120.00', withBefore: '$172.00' }
    expect(spanish.consentScript(agreed)).toContain(
      'Usted dice que sí a: Llanta nueva. Son $120.00. Con lo que ya aceptó antes, son $172.00 en total. ¿Es correcto?',
    )
    expect(spanish.consentScript(said)).toBe(
      'Para su auto gris: La llanta está vieja. Le ofrecemos: Llanta nueva: de repuesto, $120.00 con impuesto. Si dice que sí ahora, estará listo para: 3:40 PM. ¿Qué quiere que hagamos?',
    )
    const none = { ...said, found: [], ready: null, agreed: [], look: '$52.00' }
    expect(spanish.consentScript(none)).toBe(
      'Para su auto gris: Le ofrecemos: Llanta nueva: de repuesto, $120.00 con impuesto. Usted dice que sí a: nada de esto. Debe $52.00 por la inspección, como se acordó. ¿Es correcto?',
    )
    expect(spanish.consentScript({ ...said, offers: [], takenBack: ['Rotar las llantas'] })).toBe(
      'Para su auto gris: Usted retira su Sí a: Rotar las llantas. No lo hemos empezado. ¿Es correcto?',
    )
  })
})

const noContact = { telephone: null, person: null }
