import type { SentSide } from '@bayledger/contract/entries'
import { canonicalText } from '@bayledger/ledger/digests'
import { fold } from '@bayledger/ledger/fold'
import { isLook, newestBundles } from '@bayledger/ledger/questions/answers'
import { openedTires } from '@bayledger/ledger/questions/authorized-works'
import { agreedSearches, type MoneySides, moneySidesOf, paidBySides } from '@bayledger/ledger/questions/money'
import type { PayloadOf } from '@bayledger/ledger/registry'
import type { OrderState } from '@bayledger/ledger/state'
import { estimatePayload } from '@bayledger/ledger/subjects/consent/estimate-payload'
import type { Answer } from '@bayledger/reckoning/estimate'
import type { OfferedBundle } from '@bayledger/reckoning/money/offer'
import { offerBundles } from '@bayledger/reckoning/money/offer-bundles'
import { priceEstimate } from '@bayledger/reckoning/money/price-estimate'
import type { PriceList } from '@bayledger/reckoning/money/price-list'
import type { Caller } from './app.ts'
import { moneyOf, sideOf, type WriteEntry } from './write-entry.ts'

/** An order as the desk reads it over HTTP. */
export type DeskOrder = {
  readonly state: OrderState
  readonly money: MoneySides
  readonly kept: readonly { readonly side: string; readonly digest: string; readonly text: string }[]
}

export const readOrder = async (desk: Caller, orderId: string): Promise<DeskOrder> => {
  const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
  return { state: fold(body.entries), money: moneySidesOf(body.entries, body.sides), kept: body.sides }
}

type Decided = PayloadOf<'estimate.decided'>
type Sent<K extends Parameters<WriteEntry>[1]> = { payload: PayloadOf<K>; sides: SentSide[] }

/** One answer to the bundles with these keys, or to every bundle but the inspection, signed at the desk. */
export const decisionOn = (
  { state }: DeskOrder,
  answer: Answer,
  change: Partial<Decided> = {},
  keys: readonly string[] | null = null,
): Sent<'estimate.decided'> => {
  const issued = state.estimates.at(-1)
  if (!issued) throw new Error('no estimate to answer')
  const [name, signature, shown] = [sideOf('W. Dunmore-Gray'), sideOf('W. D-G'), sideOf('as it was shown')]
  const asked = newestBundles(state).filter((bundle) =>
    keys === null ? !isLook(bundle) : keys.includes(bundle.bundleKey),
  )
  return {
    payload: {
      revision: issued.scope.revision,
      digest: issued.digest,
      answers: asked.map(({ bundleKey, cautions }) => ({
        bundleKey,
        answer,
        deferredUntil: null,
        cautionsShown: answer === 'authorized' ? [] : cautions,
      })),
      by: { relation: 'owner', name: name.digest },
      consent: { channel: 'in-person', signature: { form: 'typed', digest: signature.digest } },
      shown: shown.digest,
      language: 'en',
      agreesToElectronicRecord: true,
      wantsRemovedParts: false,
      ...change,
    },
    sides: [name, signature, shown],
  }
}

/** The next version of the estimate from this price list, with or without some of its bundles; of a comeback with its cover. */
export const nextEstimate = (
  { state, money, kept }: DeskOrder,
  prices: PriceList,
  without: readonly string[] = [],
  added: readonly OfferedBundle[] = [],
  cover: (bundle: OfferedBundle) => OfferedBundle = (bundle) => bundle,
): Sent<'estimate.issued'> => {
  const { diagnosis, sheet, authority, estimates } = state
  if (!diagnosis || !sheet) throw new Error('an estimate follows findings')
  const offered = offerBundles({
    diagnosis: diagnosis.diagnosis,
    sheet: sheet.sheet,
    prices,
    look: authority.look?.lookFee ?? 'waived',
    opened: openedTires(state),
  })
  const priced = priceEstimate({
    bundles: [...offered.filter(({ bundleKey }) => !without.includes(bundleKey)), ...added].map(cover),
    prices,
    revision: estimates.length + 1,
    agreed: agreedSearches(state, money),
    readyAt: estimates.at(-1)?.scope.readyAt ?? null,
  })
  const known = new Map(kept.map(({ text, digest }) => [text, digest]))
  const sides: SentSide[] = []
  const payload = estimatePayload(priced, diagnosis.written.entryId, (content) => {
    const text = canonicalText(content)
    const before = known.get(text)
    if (before !== undefined) return before
    const side = sideOf(text)
    known.set(text, side.digest)
    sides.push(side)
    return side.digest
  })
  return { payload, sides }
}

/** A payment of so many cents. */
export const paymentOf = (
  amountCents: number,
  method: PayloadOf<'payment.noted'>['method'],
): Sent<'payment.noted'> => {
  const money = moneyOf({ amountCents })
  return { payload: { money: money.digest, method, back: null }, sides: [money] }
}

/** So many cents given back of all that was paid by a method until now. */
export const refundOf = (
  { state }: DeskOrder,
  amountCents: number,
  method: PayloadOf<'payment.noted'>['method'],
  of: readonly string[] = paidBySides(state, method),
): Sent<'payment.noted'> => {
  const [money, why] = [moneyOf({ amountCents: 0 - amountCents }), sideOf('Charged twice.')]
  return {
    payload: { money: money.digest, method, back: { why: why.digest, of: [...of] } },
    sides: [money, why],
  }
}
