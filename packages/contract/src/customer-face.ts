import { CustomerLanguageCode } from '@bayledger/ledger/customer-language-code'
import { CautionReference } from '@bayledger/reckoning/cautions/caution-reference'
import { Answer } from '@bayledger/reckoning/estimate'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Digest, Id, Instant, line } from './identity.ts'

/** What the customer's phone shows of an order: no VIN, no address, no notes of the shop. */
export const CustomerOrder = z.strictObject({
  /** In which language every sentence here is. */
  language: CustomerLanguageCode,
  shopName: z.string(),
  /** Whom to call; `null` where the shop has set no number. */
  shopPhone: z.nullable(z.string()),
  timeZone: z.string(),
  orderNumber: z.string(),
  customerName: z.string(),
  vehicleDescription: z.string(),
  color: z.nullable(z.string()),
  /** "May I drive?" in one sentence, with the word that the pattern of severity gives it. */
  drive: z.strictObject({
    verdict: z.enum(['do-not-drive', 'may-drive', 'not-yet-known']),
    sentence: z.string(),
    /** What to do now: how a vehicle that must not be driven gets away. */
    advice: z.array(z.string()),
    /** How and why the air is checked more often than each month; `null` where it is not. */
    how: z.nullable(z.string()),
  }),
  /** When it will be ready, as far as that is known while it is worked on. */
  ready: z.nullable(z.string()),
  light: z.nullable(z.string()),
  /** What stops the vehicle and what explains the light, and nothing else that was found. */
  findings: z.array(
    z.strictObject({
      code: z.string(),
      /** `unexplained`: the light's own finding, where another question must be answered before there is a cause. */
      severity: z.enum([
        'do-not-drive',
        'do-not-open-the-tire',
        'repair-before-release',
        'cause',
        'unexplained',
      ]),
      wheels: z.array(z.enum(['LF', 'RF', 'RR', 'LR', 'SP'])),
      sentence: z.string(),
      /** What proves it, in the figures of the trade, line by line. */
      figures: z.array(z.string()),
      /** Of a danger: what removes it, with its price or that there is none yet. */
      remedies: z.array(z.string()),
    }),
  ),
  /** The technician disagrees with the rules, and the customer reads so. */
  technicianDiffers: z.boolean(),
  gauges: z.partialRecord(
    z.enum(['LF', 'RF', 'RR', 'LR', 'SP']),
    z.strictObject({
      value: z.number(),
      unit: z.enum(['psi', 'kPa', 'bar']),
      /** The door label's cold pressure at this position. */
      labelPsi: z.nullable(z.number()),
    }),
  ),
  /** At the wheels that a finding names: what the tire lacks, and how much of it is colder air or lost air. */
  lacks: z.array(z.strictObject({ wheel: z.enum(['LF', 'RF', 'RR', 'LR', 'SP']), words: z.string() })),
  /** At the wheels that a finding names: how often the sensor was tried that gave no answer. */
  silent: z.partialRecord(z.enum(['LF', 'RF', 'RR', 'LR', 'SP']), z.int()),
  estimate: z.nullable(
    z.strictObject({
      revision: z.int(),
      digest: Digest,
      /** SHA-256 of what is shown here, words and amounts: an answer names it, so that nobody decides on something else. */
      shown: Digest,
      issuedAt: Instant,
      readyAt: z.nullable(Instant),
      bundles: z.array(
        z.strictObject({
          bundleKey: z.string(),
          title: z.string(),
          reason: z.string(),
          /** The work removes a danger; it is asked about first. */
          removesDanger: z.boolean(),
          alternativeTo: z.nullable(z.string()),
          /** Only for a case that may never come: nothing of it is in a total. */
          conditional: z.boolean(),
          lines: z.array(
            z.strictObject({
              lineKey: z.string(),
              words: z.string(),
              amountCents: z.int(),
              /** On a comeback: whether the warranty covers it, until when, and why not. */
              cover: z.optional(z.string()),
            }),
          ),
          /** On a comeback: how much of it the warranty covers, and why the rest is not covered. */
          coverNote: z.optional(z.string()),
          taxCents: z.int(),
          totalCents: z.int(),
          cautions: z.array(z.strictObject({ number: z.string(), version: z.int(), words: z.string() })),
          /** Of a later version: what is new in it, or has another price than in the one before, in cents with tax. */
          since: z.nullable(
            z.discriminatedUnion('is', [
              z.strictObject({ is: z.literal('new') }),
              z.strictObject({ is: z.literal('changed'), beforeCents: z.int() }),
            ]),
          ),
          answer: z.nullable(Answer),
          /** The inspection, which was agreed to before it began: it needs no answer. */
          agreedBefore: z.boolean(),
          answerable: z.boolean(),
          /** A Yes that may be taken back, since no work on it was begun. */
          mayTakeBack: z.boolean(),
        }),
      ),
      totalCents: z.int(),
      /** The inspection: when it is charged, and how much, in cents with tax. */
      look: z.strictObject({
        terms: z.enum(['charged', 'waived-with-work', 'waived']),
        cents: z.int(),
      }),
    }),
  ),
  /** Photos that the shop shows, as far as they have arrived, with what each is of. */
  photos: z.array(z.strictObject({ digest: Digest, where: z.string(), what: z.string(), takenAt: Instant })),
  report: z.nullable(z.strictObject({ number: z.string(), sealedAt: Instant })),
})
export type CustomerOrder = z.infer<typeof CustomerOrder>

export const openLink = endpoint({
  operationId: 'openLink',
  summary: "Exchange the secret behind the link's # for a short session.",
  method: 'POST',
  path: '/api/customer/session',
  access: { who: 'public' },
  body: z.strictObject({ secret: z.string().check(z.minLength(1), z.maxLength(200)) }),
  triesPerMinute: 20,
  replies: { 201: z.strictObject({ expiresAt: Instant }) },
  problems: ['LINK_REFUSED'],
})

export const getCustomerOrder = endpoint({
  operationId: 'getCustomerOrder',
  summary: 'What was found, what it costs, what was answered.',
  method: 'GET',
  path: '/api/customer/order',
  access: { who: 'customer-link' },
  replies: { 200: CustomerOrder },
  problems: ['ORDER_READ_ONLY'],
})

export const putCustomerLanguage = endpoint({
  operationId: 'putCustomerLanguage',
  summary:
    "The language that the customer reads: page, messages and report follow it, on the customer's card too.",
  method: 'PUT',
  path: '/api/customer/language',
  access: { who: 'customer-link' },
  body: z.strictObject({ language: CustomerLanguageCode }),
  replies: { 204: null },
  problems: ['ORDER_READ_ONLY'],
})

export const decideEstimate = endpoint({
  operationId: 'decideEstimate',
  summary: "The customer's answers, bundle by bundle, to the newest estimate, with a signature.",
  method: 'POST',
  path: '/api/customer/decisions',
  access: { who: 'customer-link' },
  body: z.strictObject({
    /** Made once when the form opens: sending it again answers the same and decides nothing twice. */
    entryId: Id,
    revision: z.int().check(z.positive()),
    digest: Digest,
    shown: Digest,
    answers: z
      .array(
        z.strictObject({
          bundleKey: z.string(),
          answer: Answer,
          deferredUntil: z.nullable(z.iso.date()),
          cautionsShown: z.array(CautionReference).check(z.maxLength(100)),
        }),
      )
      .check(z.minLength(1), z.maxLength(200)),
    name: line(120),
    relation: z.enum(['owner', 'named-person', 'fleet-contact', 'driver']),
    signature: z.strictObject({
      form: z.enum(['drawn', 'typed']),
      text: z.string().check(z.minLength(1), z.maxLength(60_000)),
    }),
    agreesToElectronicRecord: z.literal(true),
    wantsRemovedParts: z.boolean(),
  }),
  replies: { 201: z.strictObject({ seq: z.int(), receivedAt: Instant }) },
  problems: ['ORDER_READ_ONLY', 'ENTRY_REFUSED'],
})

export const getCustomerReport = endpoint({
  operationId: 'getCustomerReport',
  summary: 'The newest sealed report.',
  method: 'GET',
  path: '/api/customer/report',
  access: { who: 'customer-link' },
  replies: { 200: { contentType: 'application/pdf' } },
  problems: ['REPORT_NOT_FOUND'],
})

export const getCustomerPhoto = endpoint({
  operationId: 'getCustomerPhoto',
  summary: 'The view copy of a photo that the shop shows.',
  method: 'GET',
  path: '/api/customer/photos/:digest',
  access: { who: 'customer-link' },
  params: z.strictObject({ digest: Digest }),
  replies: { 200: { contentType: 'image/jpeg' } },
  problems: ['ORDER_READ_ONLY', 'PHOTO_NOT_FOUND'],
})
