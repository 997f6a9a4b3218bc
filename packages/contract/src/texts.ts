import { type MessageAbout, type TemplateFault, templateFault } from '@bayledger/ledger/message-template'
import { WarrantyTerms } from '@bayledger/reckoning/money/warranty'
import * as z from 'zod/mini'
import { csvEndpoints } from './csv-endpoints.ts'
import { endpoint } from './endpoint.ts'
import { line } from './identity.ts'
import { RecordVersion, Sure } from './record.ts'

/** Several lines of text, trimmed, without control characters but line breaks. */
const text = (maximum: number) =>
  z.string().check(z.trim(), z.minLength(1), z.maxLength(maximum), z.regex(/^(?:[^\p{Cc}\p{Cs}]|\n)*$/u))

const allowedInstead = (fault: TemplateFault): string =>
  fault.why === 'missing-place'
    ? `a text that holds ${fault.place}`
    : `a text in which only ${fault.places.join(', ')} are in braces: ${fault.found} is not filled in`

const messageText = (about: MessageAbout) =>
  z.nullable(
    text(600).check(
      z.superRefine<string>((typed, { addIssue }) => {
        const fault = typed === '' ? null : templateFault(about, typed)
        if (fault !== null) addIssue({ code: 'custom', message: allowedInstead(fault) })
      }),
    ),
  )

const inBothLanguages = (about: MessageAbout) =>
  z.strictObject({ en: messageText(about), es: messageText(about) })

const quietHoursForm = /^([01]\d|2[0-3]):[0-5]\d-([01]\d|2[0-3]):[0-5]\d$/

/** The shop's own words on paper and in messages. What the program itself says is not edited here. */
export const TextsContent = z.strictObject({
  /** Printed under the shop's name. */
  lines: z.array(line(80)).check(z.maxLength(4)),
  /** In international form. */
  telephone: z.nullable(z.string().check(z.regex(/^\+[1-9]\d{6,14}$/, 'a number as +15555550100'))),
  reportFooter: z.nullable(text(600)),
  /** What the shop adds to the program's cautions, never in place of them. */
  cautions: z.nullable(text(600)),
  /** What goes out in place of the program's own words; what stands in braces is filled in. */
  messages: z.strictObject({
    estimate: inBothLanguages('estimate'),
    report: inBothLanguages('report'),
    retorque: inBothLanguages('retorque'),
    deferred: inBothLanguages('deferred'),
  }),
  /** No message goes between these two times of the place's day; over midnight where the first is later. */
  quietHours: z.nullable(z.string().check(z.regex(quietHoursForm, 'two times as 21:00-08:00'))),
  /** For how long the shop stands by its work and its sensors. */
  warranty: WarrantyTerms,
})
export type TextsContent = z.infer<typeof TextsContent>

const Texts = z.strictObject({
  id: z.literal('texts'),
  version: z.int(),
  content: TextsContent,
  facts: z.strictObject({}),
})

export const getTexts = endpoint({
  operationId: 'getTexts',
  summary: "The shop's own texts with their history, newest first; version 0 where none were written yet.",
  method: 'GET',
  path: '/api/register/texts',
  access: { who: 'desk', roles: ['owner'] },
  replies: { 200: z.strictObject({ record: Texts, history: z.array(RecordVersion) }) },
  problems: [],
})

export const putTexts = endpoint({
  operationId: 'putTexts',
  summary: 'Write a new version of the texts; reports that are sealed keep the version that they printed.',
  method: 'PUT',
  path: '/api/register/texts',
  access: { who: 'desk', roles: ['owner'], proof: 'recent' },
  ifMatch: true,
  body: z.strictObject({ content: TextsContent, sure: Sure }),
  replies: { 200: Texts },
  problems: [],
})

export const textsCsv = csvEndpoints({
  name: 'Texts',
  words: 'own texts',
  path: '/api/register/texts',
  roles: ['owner'],
  proof: 'recent',
})
