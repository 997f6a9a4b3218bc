import { digestOf } from '@bayledger/ledger/hash-chain'
import { authorizedBundles } from '@bayledger/ledger/questions/gates'
import type { Consent } from '@bayledger/ledger/subjects/consent/kinds'
import { cautionShown, customerCaution } from '@bayledger/reckoning/cautions/customer-cautions'
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { offerBundles } from '@bayledger/reckoning/money/offer-bundles'
import { priceEstimate } from '@bayledger/reckoning/money/price-estimate'
import { english } from '@bayledger/wording/en/english'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import { firstPrices as prices } from '../first-settings.ts'
import { customerOf } from './customers.ts'
import type { OrderPen } from './order-pen.ts'
import type { DemoPerson } from './people.ts'

type Issue = {
  readonly at: string
  readonly by: DemoPerson
  readonly readyAt: string
  readonly look: 'charged' | 'waived'
}

/** Freezes what the confirmed findings offer into the next version of the estimate; answers its number. */
export const issueEstimate = (pen: OrderPen, { at, by, readyAt, look }: Issue): number => {
  const { diagnosis, sheet, estimates } = pen.state()
  if (!diagnosis || !sheet) throw new RangeError(`${pen.number}: an estimate follows findings`)
  const estimate = priceEstimate({
    bundles: offerBundles({
      diagnosis: diagnosis.diagnosis,
      sheet: sheet.sheet,
      prices,
      look,
      sentenceOf: (finding) => sentenceFor(english, finding),
    }),
    prices,
    revision: estimates.length + 1,
    readyAt: pen.calendar.at(readyAt),
  })
  pen.write(
    'estimate.issued',
    { diagnosisId: diagnosis.written.entryId, estimate, digest: digestOf(estimate) },
    { at, by },
  )
  return estimate.revision
}

type Decision = {
  readonly by: DemoPerson
  readonly shownAt: string
  readonly decidedAt: string
  readonly channel: 'in-person' | 'telephone'
}

/**
 * Shows the newest version and records a Yes to all of it, and Later to what would replace a line; the server then
 * issues the job plan.
 */
export const authorizeAll = (pen: OrderPen, { by, shownAt, decidedAt, channel }: Decision): void => {
  const issued = pen.state().estimates.at(-1)
  const sheet = pen.state().sheet?.sheet
  const customer = customerOf(pen.state().opened?.customerId ?? '')
  if (!issued || !sheet) throw new RangeError(`${pen.number}: there is no estimate to answer`)
  const { revision, bundles, totals } = issued.estimate
  pen.write('estimate.shown', { revision, channel, linkId: null }, { at: shownAt, by })
  const decided = pen.write(
    'estimate.decided',
    {
      revision,
      digest: issued.digest,
      answers: bundles.map(({ bundleKey, alternativeTo, caution }) =>
        alternativeTo === null
          ? { bundleKey, answer: 'authorized', deferredUntil: null, cautionShown: null }
          : {
              bundleKey,
              answer: 'deferred',
              deferredUntil: pen.calendar.on('2026-07-13'),
              cautionShown: shownTo(caution),
            },
      ),
      by: { relation: 'owner', name: pen.personal(customer.name) },
      consent: consentOf(pen, customer, channel, shownAt, readOut(bundles, totals.totalCents)),
      language: 'en',
      agreesToElectronicRecord: true,
      wantsRemovedParts: false,
    },
    { at: decidedAt, by },
  )
  const works = authorizedBundles(pen.state()).flatMap(({ works, bundleKey }) =>
    works.map((work) => ({ work, bundleKey })),
  )
  pen.write(
    'plan.issued',
    { plan: planJob(sheet, works, 1), decisionId: decided.id },
    { at: decidedAt, restsOn: [decided.id] },
  )
}

/** What an answer keeps of a bundle's caution: its number with the version that was read. */
const shownTo = (number: string | null): string | null => {
  const caution = number === null ? null : customerCaution(number)
  return caution && cautionShown(caution)
}

const consentOf = (
  pen: OrderPen,
  customer: ReturnType<typeof customerOf>,
  channel: 'in-person' | 'telephone',
  calledAt: string,
  words: string,
): Consent =>
  channel === 'in-person'
    ? { channel, signature: { form: 'typed', digest: pen.personal(customer.name) } }
    : {
        channel,
        number: pen.personal(customer.phone),
        calledAt: pen.calendar.at(calledAt),
        readOut: pen.personal(words),
        answerWords: pen.personal('Yes, go ahead.'),
      }

const readOut = (bundles: readonly { readonly title: string }[], totalCents: number): string =>
  `I read: ${bundles.map(({ title }) => title).join('; ')}. ${(totalCents / 100).toFixed(2)} dollars with tax. You say yes?`
