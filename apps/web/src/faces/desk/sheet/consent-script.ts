import { authorizedBundles, isLook } from '@bayledger/ledger/questions/answers'
import { type LookTerms, lookCentsWith } from '@bayledger/ledger/questions/look-cents'
import { lookTermsOf } from '@bayledger/ledger/questions/look-terms'
import { dueCents } from '@bayledger/ledger/questions/money'
import { toldFindings } from '@bayledger/ledger/questions/told-findings'
import type { IssuedEstimate } from '@bayledger/ledger/state'
import type { Answer } from '@bayledger/reckoning/estimate'
import { isConditional } from '@bayledger/reckoning/money/added-bundles'
import type { ConsentScriptWording } from '@bayledger/wording/consent-script'
import type { CustomerLanguage } from '@bayledger/wording/language'
import type { ShownBundle } from '@bayledger/wording/shown-estimate'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import { orderMoney } from '../../../features/ledger/order-money.ts'
import type { ReadOrder } from '../../../ledger/order.ts'
import { type Clock, clockTimeOrDay, money } from '../../../lib/format.ts'
import type { DecisionForm } from './decision-form.ts'

/** What the script says beside the offers and the answers to them. */
export type ScriptAround = {
  readonly vehicle: string
  /** In the language of the script. */
  readonly found: readonly string[]
  /** Formatted. */
  readonly ready: string | null
  readonly look: LookTerms
  /** Work is authorized already, and stays so: what the inspection costs was said with it. */
  readonly worksAnyway: boolean
  /** What is due for all that was agreed to before, cents; `null`: that is not shown here. */
  readonly dueBefore: number | null
}

/**
 * What is read out by telephone, with the answers as they are filled in. Of `returnable`, where a Yes may be taken back,
 * only what is taken back is read.
 */
export const scriptFor = (
  words: ConsentScriptWording,
  { look, worksAnyway, dueBefore, ...around }: ScriptAround,
  bundles: readonly ShownBundle[],
  given: Readonly<Record<string, Answer>>,
  returnable: ReadonlySet<string>,
): string => {
  const answered = (answer: Answer) => bundles.filter(({ bundleKey }) => given[bundleKey] === answer)
  const asked = bundles.filter(({ bundleKey }) => !returnable.has(bundleKey))
  const agreed = answered('authorized').filter(({ bundleKey }) => !returnable.has(bundleKey))
  const work = agreed.filter(({ conditional }) => !conditional)
  const takenBack = answered('declined').filter(({ bundleKey }) => returnable.has(bundleKey))
  const sum = work.reduce((cents, { totalCents }) => cents + totalCents, 0)
  const lookCents = worksAnyway ? 0 : lookCentsWith(look, work.length > 0)
  return words({
    ...around,
    offers: asked.map(({ title, totalCents, alternativeTo, coverNote }) => ({
      title,
      price: money(totalCents),
      insteadOf: bundles.find(({ bundleKey }) => bundleKey === alternativeTo)?.title ?? null,
      cover: coverNote ?? null,
    })),
    agreed: asked.some(({ bundleKey }) => given[bundleKey] !== undefined)
      ? agreed.map(({ title }) => title)
      : null,
    look: lookCents === 0 ? null : money(lookCents),
    total: money(lookCents + sum),
    withBefore: worksAnyway && dueBefore !== null && takenBack.length === 0 ? money(dueBefore + sum) : null,
    takenBack: takenBack.map(({ title }) => title),
  })
}

/** What a caller hears beside the offers: what was found, by when it is ready, and what the inspection costs. */
export const aroundScript = (
  order: ReadOrder,
  { scope, written }: IssuedEstimate,
  language: CustomerLanguage,
  { given }: DecisionForm,
  clock: Clock,
): ScriptAround => ({
  vehicle: order.vehicle.description,
  found: toldFindings(order.state).map(({ finding }) => sentenceFor(language, finding)),
  ready:
    scope.readyAt === null
      ? null
      : clockTimeOrDay(scope.readyAt, written.writtenAt, { ...clock, locale: language.locale }),
  look: lookTermsOf(order.state, orderMoney(order)),
  dueBefore: dueCents(order.state, orderMoney(order)),
  worksAnyway: authorizedBundles(order.state).some(
    (bundle) => !isLook(bundle) && !isConditional(bundle) && given[bundle.bundleKey] !== 'declined',
  ),
})
