import { canonicalText } from '@bayledger/ledger/digests'
import { isLook, unansweredBundles } from '@bayledger/ledger/questions/answers'
import { authorizedWorks, openedTires } from '@bayledger/ledger/questions/authorized-works'
import { agreedSearches } from '@bayledger/ledger/questions/money'
import { tireDangers } from '@bayledger/ledger/questions/tire-dangers'
import { estimatePayload } from '@bayledger/ledger/subjects/consent/estimate-payload'
import type { BundleAnswer, Consent } from '@bayledger/ledger/subjects/consent/kinds'
import type { Bundle } from '@bayledger/reckoning/estimate'
import { planJob } from '@bayledger/reckoning/job-plan/plan-job'
import { coverBundle } from '@bayledger/reckoning/money/cover-bundles'
import { firstPrices as prices } from '@bayledger/reckoning/money/first-prices'
import type { OfferedBundle, OfferOf } from '@bayledger/reckoning/money/offer'
import { offerBundles } from '@bayledger/reckoning/money/offer-bundles'
import { priceEstimate } from '@bayledger/reckoning/money/price-estimate'
import { english } from '@bayledger/wording/en/english'
import { type ShownEstimate, shownEstimate } from '@bayledger/wording/shown-estimate'
import { customerOf, type DemoCustomer } from './customers.ts'
import type { OrderPen } from './order-pen.ts'
import type { DemoPerson } from './people.ts'

type Issue = {
  readonly at: string
  readonly by: DemoPerson
  readonly readyAt: string
  readonly look: OfferOf['look']
  /** What the customer asks for and what the advisor adds, beside what the findings offer. */
  readonly added?: readonly OfferedBundle[]
}

/** Freezes what the confirmed findings offer into the next version of the estimate; answers its number. */
export const issueEstimate = (pen: OrderPen, { at, by, readyAt, look, added = [] }: Issue): number => {
  const { diagnosis, sheet, estimates, comeback } = pen.state()
  if (!diagnosis || !sheet) throw new RangeError(`${pen.number}: an estimate follows findings`)
  const offered = offerBundles({
    diagnosis: diagnosis.diagnosis,
    sheet: sheet.sheet,
    prices,
    look,
    opened: openedTires(pen.state()),
  })
  const facts = pen.comeback()
  const estimate = priceEstimate({
    // The look comes last, after what was added.
    bundles: [
      ...offered.filter(({ bundleKey }) => bundleKey !== 'look'),
      ...added,
      ...offered.filter(({ bundleKey }) => bundleKey === 'look'),
    ].map((bundle) =>
      facts && comeback ? coverBundle(bundle, { ...facts, cause: comeback.cause }) : bundle,
    ),
    agreed: facts ? new Map() : agreedSearches(pen.state(), pen.moneySides()),
    prices,
    revision: estimates.length + 1,
    readyAt: pen.calendar.at(readyAt),
  })
  pen.write('estimate.issued', estimatePayload(estimate, diagnosis.written.entryId, pen.money), { at, by })
  return estimate.revision
}

type Decision = {
  readonly by: DemoPerson
  readonly shownAt: string
  readonly decidedAt: string
  readonly channel: 'in-person' | 'telephone'
  /** Absent: one of the demo's own. */
  readonly customer?: DemoCustomer
}

/**
 * Shows the newest version and records a Yes to all of it, and Not today to what would replace a line; the server then
 * issues the job plan.
 */
export const authorizeAll = (pen: OrderPen, decision: Decision): void =>
  answerAll(pen, decision, ({ bundleKey, alternativeTo, cautions }) =>
    alternativeTo === null
      ? { bundleKey, answer: 'authorized', deferredUntil: null, cautionsShown: [] }
      : {
          bundleKey,
          answer: 'deferred',
          deferredUntil: pen.calendar.on('2026-07-13'),
          cautionsShown: cautions,
        },
  )

/** Shows the newest version and records a No to all of it, with its cautions. */
export const declineAll = (pen: OrderPen, decision: Decision): void =>
  answerAll(pen, decision, ({ bundleKey, cautions }) => ({
    bundleKey,
    answer: 'declined',
    deferredUntil: null,
    cautionsShown: cautions,
  }))

/** Shows the newest version and records one answer to each bundle that waits for one; the server then issues the plan. */
export const answerAll = (
  pen: OrderPen,
  { by, shownAt, decidedAt, channel, ...decision }: Decision,
  answerTo: (bundle: Bundle) => BundleAnswer,
): void => {
  const issued = pen.state().estimates.at(-1)
  const sheet = pen.state().sheet?.sheet
  const customer = decision.customer ?? customerOf(pen.state().opened?.customerId ?? '')
  if (!issued || !sheet) throw new RangeError(`${pen.number}: there is no estimate to answer`)
  const shown = shownEstimate(english, issued, pen.moneySides())
  if (!shown) throw new RangeError(`${pen.number}: the estimate has no money`)
  const { revision } = issued.scope
  const open = unansweredBundles(pen.state()).filter((bundle) => !isLook(bundle))
  pen.write('estimate.shown', { revision, channel, linkId: null }, { at: shownAt, by })
  const decided = pen.write(
    'estimate.decided',
    {
      revision,
      digest: issued.digest,
      answers: open.map(answerTo),
      by: { relation: 'owner', name: pen.personal(customer.name) },
      consent: consentOf(pen, customer, channel, shownAt),
      shown: pen.shown(channel === 'telephone' ? readOut(shown) : canonicalText(shown)),
      language: 'en',
      agreesToElectronicRecord: true,
      wantsRemovedParts: false,
    },
    { at: decidedAt, by },
  )
  const works = authorizedWorks(pen.state())
  pen.write(
    'plan.issued',
    {
      plan: planJob(sheet, works, (pen.state().plan?.plan.planVersion ?? 0) + 1, tireDangers(pen.state())),
      decisionId: decided.id,
    },
    { at: decidedAt, restsOn: [decided.id] },
  )
}

const consentOf = (
  pen: OrderPen,
  customer: DemoCustomer,
  channel: 'in-person' | 'telephone',
  calledAt: string,
): Consent =>
  channel === 'in-person'
    ? { channel, signature: { form: 'typed', digest: pen.personal(customer.name) } }
    : {
        channel,
        number: pen.personal(customer.phone),
        calledAt: pen.calendar.at(calledAt),
        answerWords: pen.personal('Yes, go ahead.'),
      }

/** What the advisor reads out on the telephone. */
const readOut = ({ bundles, totalCents }: ShownEstimate): string =>
  `I read: ${bundles.map(({ title }) => title).join('; ')}. ${(totalCents / 100).toFixed(2)} dollars with tax. You say yes?`
