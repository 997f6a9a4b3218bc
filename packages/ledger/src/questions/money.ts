import {
  BundleMoney,
  Cents,
  EstimateMoney,
  type PricedEstimate,
  type Totals,
} from '@bayledger/reckoning/estimate'
import { isConditional } from '@bayledger/reckoning/money/added-bundles'
import { sumCents } from '@bayledger/reckoning/money/cents'
import * as z from 'zod/mini'
import type { Foldable } from '../fold/foldable.ts'
import { inlineMoneyIn } from '../sides.ts'
import type { IssuedEstimate, OrderState } from '../state.ts'
import { answerTo, authorizedBundles, isLook, newestBundles } from './answers.ts'
import { lookIsOwed } from './look-is-owed.ts'

/** The inspection fee, agreed before anybody inspects. */
export const LookFee = z.strictObject({ lookFeeCents: Cents.check(z.gte(0)) })

/** What was received; a negative amount gives money back. */
export const Payment = z.strictObject({ amountCents: Cents })

/**
 * The money sides of an order, text by digest. A digest that is not in it was withheld or erased: every question below
 * answers `null` then, never zero.
 */
export type MoneySides = ReadonlyMap<string, string>

/** The money that a reader may have: the sides that came with the entries, and what first versions held inline. */
export const moneySidesOf = (
  entries: readonly Foldable[],
  sides: readonly { readonly digest: string; readonly text: string }[],
): MoneySides =>
  new Map([
    ...entries.flatMap((entry) => [...inlineMoneyIn(entry)]),
    ...sides.map(({ digest, text }) => [digest, text] as const),
  ])

const read =
  <Schema extends z.ZodMiniType>(schema: Schema) =>
  (sides: MoneySides, digest: string | undefined): z.infer<Schema> | null => {
    const text = digest === undefined ? undefined : sides.get(digest)
    if (text === undefined) return null
    const parsed = z.safeParse(schema, jsonOf(text))
    return parsed.success ? parsed.data : null
  }

const jsonOf = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** Lines and totals of a bundle, cents; `null` where they were withheld or erased. */
export const bundleMoney = read(BundleMoney)

/** Price list, tax figures and totals of a version, cents; `null` where they were withheld or erased. */
export const estimateMoney = read(EstimateMoney)

/** What the look costs, cents; `null` where it was withheld or erased. */
export const lookFee = read(LookFee)

/** What one payment brought, cents; `null` where it was withheld or erased. */
export const payment = read(Payment)

/** An issued version with its money, as `admit` computes it again; `null` where any of it is missing. */
export const pricedEstimate = (
  sides: MoneySides,
  { revision, readyAt, bundles, money }: IssuedEstimate['scope'],
): PricedEstimate | null => {
  const whole = estimateMoney(sides, money)
  const priced = bundles.flatMap(({ money: digest, ...bundle }) => {
    const own = bundleMoney(sides, digest)
    return own ? [{ ...bundle, money: own }] : []
  })
  return whole && priced.length === bundles.length
    ? { revision, readyAt, bundles: priced, money: whole }
    : null
}

/**
 * The money of the searches for a leak that the customer has authorized, by bundle key: the next version of the estimate
 * keeps it, so that a price list made since does not ask about the search again.
 */
export const agreedSearches = (state: OrderState, sides: MoneySides): ReadonlyMap<string, BundleMoney> =>
  new Map(
    authorizedBundles(state)
      .filter(({ title }) => title === 'leak-search')
      .flatMap(({ bundleKey, money }) => {
        const own = bundleMoney(sides, money)
        return own ? [[bundleKey, own] as const] : []
      }),
  )

/** The totals of a bundle, cents; `null` where they were withheld or erased. */
export const bundleTotals = (sides: MoneySides, bundle: { readonly money: string }): Totals | null =>
  bundleMoney(sides, bundle.money)?.totals ?? null

/** The sum of amounts of which none may be missing; `null` where one is. */
const sumOf = (amounts: readonly (number | null | undefined)[]): number | null => {
  const known = amounts.filter((amount) => typeof amount === 'number')
  return known.length === amounts.length ? sumCents(known) : null
}

/** The sum of some bundles with tax, cents; `null` where one of them was withheld or erased. */
export const sumOfBundles = (
  sides: MoneySides,
  bundles: readonly { readonly money: string }[],
): number | null => sumOf(bundles.map((bundle) => bundleTotals(sides, bundle)?.totalCents))

/** What the customer authorized, with tax, cents, without what is only for a case that may never come; `null` where any of it was withheld or erased. */
export const authorizedCents = (state: OrderState, sides: MoneySides): number | null =>
  sumOfBundles(
    sides,
    authorizedBundles(state).filter((bundle) => !isConditional(bundle)),
  )

/** What was received so far, cents; `null` where a payment was withheld or erased. */
export const paidCents = (state: OrderState, sides: MoneySides): number | null =>
  sumOf(state.payments.map(({ money }) => payment(sides, money)?.amountCents))

/** What was given back so far, cents; `null` where a payment was withheld or erased. */
export const givenBackCents = (state: OrderState, sides: MoneySides): number | null =>
  sumOf(
    state.payments.map(({ money }) => {
      const amount = payment(sides, money)?.amountCents
      return amount === undefined ? null : Math.max(0, 0 - amount)
    }),
  )

type PaidBy = OrderState['payments'][number]['method']

/** The money of all that was paid by a method and given back by it, as it counts now, oldest first. */
export const paidBySides = (state: OrderState, method: PaidBy): string[] =>
  state.payments.flatMap((noted) => (noted.method === method ? noted.money : []))

/** What was paid by a method and not yet given back, cents; `null` where that was withheld or erased. */
export const leftByMethod = (state: OrderState, sides: MoneySides, method: PaidBy): number | null =>
  sumOf(paidBySides(state, method).map((digest) => payment(sides, digest)?.amountCents))

/**
 * What is owed for the look, cents, as far as no authorized bundle holds it; `null` where that cannot be known. An
 * estimate names it in a bundle of its own. Estimates of earlier versions had it in their first bundle.
 */
export const lookOwedCents = (state: OrderState, sides: MoneySides): number | null => {
  const told = state.authority.look
  if (!told || !lookIsOwed(state)) return 0
  const own = newestBundles(state).find(isLook)
  if (told.lookFee === 'charged' && own)
    return answerTo(state, own)?.answer === 'authorized' ? 0 : (bundleTotals(sides, own)?.totalCents ?? null)
  const authorized = authorizedBundles(state).map((bundle) => bundleMoney(sides, bundle.money))
  if (authorized.includes(null)) return null
  const isCharged = authorized.some((money) => money?.lines.some(({ kind }) => kind === 'look'))
  return isCharged ? 0 : (lookFee(sides, told.money)?.lookFeeCents ?? null)
}

/** What the customer owes for everything so far, paid or not, cents; `null` where that cannot be known. */
export const dueCents = (state: OrderState, sides: MoneySides): number | null =>
  sumOf([authorizedCents(state, sides), lookOwedCents(state, sides)])

/** What is due and not yet paid, cents; under zero where too much was paid; `null` where that cannot be known. */
export const owedCents = (state: OrderState, sides: MoneySides): number | null => {
  const due = dueCents(state, sides)
  const paid = paidCents(state, sides)
  return due === null || paid === null ? null : due - paid
}

/**
 * Of what is owed, what was never paid, cents: money given back may be meant for good, and nobody records whether it is. `null`
 * where it cannot be known.
 */
export const neverPaidCents = (state: OrderState, sides: MoneySides): number | null => {
  const owed = owedCents(state, sides)
  const back = givenBackCents(state, sides)
  return owed === null || back === null ? null : owed > 0 ? Math.max(0, owed - back) : owed
}
