import { tiresOpenedAnyway } from '@bayledger/ledger/questions/authorized-works'
import { namedBundle } from '@bayledger/ledger/questions/named'
import { estimatePayload } from '@bayledger/ledger/subjects/consent/estimate-payload'
import { isAdded } from '@bayledger/reckoning/money/added-bundles'
import { unsoldOffers } from '@bayledger/reckoning/money/unsold-offers'
import { bundleReason, bundleTitle } from '@bayledger/wording/bundles'
import { english } from '@bayledger/wording/en/english'
import { wheelList } from '@bayledger/wording/wheels'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { draftEntry } from '../../../../features/ledger/draft-entry.ts'
import { orderMoney } from '../../../../features/ledger/order-money.ts'
import { moneySealer } from '../../../../features/ledger/seal-money.ts'
import { useWriteEntries } from '../../../../features/ledger/write-entries.ts'
import { priceBookIn, pricesToday } from '../../../../features/settings/price-book.ts'
import { settingsQuery } from '../../../../features/settings/queries.ts'
import { money } from '../../../../lib/format.ts'
import { problemText } from '../../../../lib/problem.ts'
import { Button } from '../../../../ui/button.tsx'
import { CheckGroup } from '../../../../ui/choice-group.tsx'
import { ProblemNotice } from '../../../../ui/problem-notice.tsx'
import { SelectField } from '../../../../ui/select-field.tsx'
import { TextField } from '../../../../ui/text-field.tsx'
import { useShopClock } from '../../shop-clock.ts'
import { promiseFault } from '../../write-up/promise-fault.ts'
import { PromiseFields } from '../../write-up/promise-fields.tsx'
import { comebackQuery } from '../comeback/comeback-query.ts'
import { CoverForm } from '../comeback/cover-form.tsx'
import type { OrderPart } from '../order-part.ts'
import { AskedJobForm } from './asked-job-form.tsx'
import { BalanceCheck } from './balance-check.tsx'
import { ChangedAmount } from './changed-amount.tsx'
import { EstimateDifferences } from './estimate-differences.tsx'
import {
  type EstimateDraft,
  estimateOf,
  keptBundles,
  newestPriced,
  offeredFor,
  readyOf,
  startDraft,
} from './estimate-draft.ts'
import { EstimatePreview } from './estimate-preview.tsx'
import { HandLineForm } from './hand-line-form.tsx'
import { LineDiscountForm } from './line-discount-form.tsx'
import { StemQuestion } from './stem-question.tsx'
import { TireCheck } from './tire-check.tsx'
import { WheelCheck } from './wheel-check.tsx'

type BuildEstimateProps = OrderPart & { onIssued?: () => void }

/**
 * Makes the next version of an estimate: what the confirmed findings offer, what the customer asks for and what is added
 * by hand, seen line by line before it is issued.
 */
export function BuildEstimate({ order, onIssued }: BuildEstimateProps) {
  const { state } = order
  const { timeZone } = useShopClock()
  const settings = useQuery(settingsQuery)
  const prices = pricesToday(settings.data, new Date())
  const discounts = priceBookIn(settings.data)?.discounts ?? []
  const sides = orderMoney(order)
  const before = newestPriced(state, sides)
  const [changes, setChanges] = useState<Partial<EstimateDraft>>({})
  const write = useWriteEntries(order.orderId)
  const sheet = state.sheet?.sheet
  const isComeback = state.opened?.comebackOf != null
  const facts = useQuery({ ...comebackQuery(order), enabled: isComeback })
  if (settings.isError)
    return <ProblemNotice problem={problemText(settings.error)} onRetry={() => void settings.refetch()} />
  if (isComeback && facts.isError)
    return <ProblemNotice problem={problemText(facts.error)} onRetry={() => void facts.refetch()} />
  if (isComeback && state.comeback === null)
    return <p>Record the cause of the comeback first: the warranty depends on it.</p>
  if (isComeback && facts.data === undefined) return null
  if (state.diagnosis === null || sheet === undefined || settings.data === undefined) return null
  if (prices === null)
    return (
      <ProblemNotice
        problem={{
          title: 'There is no price list.',
          detail: 'The owner sets the prices first; then the estimate builds itself.',
        }}
      />
    )
  const draft = { ...startDraft(before, discounts), ...changes }
  const set = (change: Partial<EstimateDraft>) => setChanges((earlier) => ({ ...earlier, ...change }))
  const { findings } = state.diagnosis.diagnosis
  const offered = offeredFor(state, sheet, prices)
  const kept = keptBundles(offered, draft)
  const rests = facts.data?.comeback
  const comeback = rests && state.comeback ? { ...rests, cause: state.comeback.cause } : null
  const estimate = estimateOf({ state, sides, offered, prices, discounts, before, comeback, timeZone }, draft)
  const readyAt = readyOf(draft, timeZone)
  const issue = () => {
    const diagnosisId = state.diagnosis?.written.entryId ?? ''
    const { seal, made } = moneySealer(order.sides.filter(({ side }) => side === 'money'))
    const payload = estimatePayload(estimate, diagnosisId, seal)
    write.mutate(
      {
        entries: [draftEntry(order.orderId, 'estimate.issued', payload, [diagnosisId])],
        sides: made(),
      },
      { onSuccess: () => onIssued?.() },
    )
  }
  const add = (bundle: EstimateDraft['added'][number]) => set({ added: [...draft.added, bundle] })
  return (
    <div className="stack">
      <CheckGroup
        label="What the findings offer"
        hint="The inspection and every line that concerns safety stay on the estimate: the customer answers them."
        flow="column"
        options={offered.map((bundle) => {
          const priced = estimate.bundles.find(({ bundleKey }) => bundleKey === bundle.bundleKey)
          return {
            value: bundle.bundleKey,
            label: `${bundleTitle(english, namedBundle(bundle))}${priced ? ` · ${money(priced.money.totals.totalCents)}` : ''}`,
            detail:
              bundle.alternativeTo === null
                ? bundleReason(english, bundle, findings)
                : 'In place of the one above',
          }
        })}
        values={kept.filter((bundle) => !isAdded(bundle)).map(({ bundleKey }) => bundleKey)}
        onChange={(values) =>
          set({ left: offered.map(({ bundleKey }) => bundleKey).filter((key) => !values.includes(key)) })
        }
      />
      {unsoldOffers(findings, offered).map(({ offer, wheels }) => (
        <p key={offer} className="quiet">
          {english.unsoldOffers[offer](wheelList(english.wheels, wheels))}
        </p>
      ))}
      <AskedJobForm
        state={state}
        prices={prices}
        sheet={sheet}
        taken={kept}
        opened={tiresOpenedAnyway(state)}
        onAdd={add}
      />
      <StemQuestion prices={prices} sheet={sheet} kept={kept} onAdd={add} />
      <TireCheck state={state} sheet={sheet} />
      <WheelCheck sheet={sheet} />
      <BalanceCheck sheet={sheet} />
      <HandLineForm prices={prices} onAdd={add} />
      <CoverForm
        bundles={estimate.bundles}
        given={draft.decisions}
        onChange={(decisions) => set({ decisions })}
      />
      <LineDiscountForm
        bundles={estimate.bundles}
        given={draft.lineDiscounts}
        onChange={(lineDiscounts) => set({ lineDiscounts })}
      />
      {discounts.length === 0 ? null : (
        <SelectField
          label="Discount on all work"
          hint="It is printed under its name. Who may give how much is in the price book."
          options={[
            { value: '', label: 'none' },
            ...discounts.map(({ key, words, percentThousandths }) => ({
              value: key,
              label: `${words} · ${percentThousandths / 1_000} %`,
            })),
          ]}
          value={draft.discount}
          onChange={(discount) => set({ discount })}
        />
      )}
      <TextField
        label="Exempt from sales tax: number of the certificate"
        hint="Empty where the customer pays the tax."
        maxLength={60}
        value={draft.exemption}
        onChange={(exemption) => set({ exemption })}
      />
      <div className="row">
        <PromiseFields
          label="Ready by"
          time={draft.readyAt}
          day={draft.readyOn}
          timeZone={timeZone}
          onChange={({ time, day }) => set({ readyAt: time, readyOn: day })}
        />
      </div>
      <EstimatePreview
        estimate={estimate}
        findings={findings}
        added={draft.added}
        onChange={(added) => set({ added })}
      />
      {before === null ? null : <EstimateDifferences before={before} after={estimate} />}
      <ChangedAmount order={order} places={settings.data.locations} after={estimate.bundles} />
      <p className="estimate-total">
        <span>With tax</span> <strong>{money(estimate.money.totals.totalCents)}</strong>
      </p>
      {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
      <Button
        look="main"
        busy={write.isPending}
        whyNot={
          kept.length === 0
            ? 'Keep at least one line.'
            : promiseFault(draft.readyAt, draft.readyOn, readyAt !== null && Date.parse(readyAt) < Date.now())
        }
        onClick={issue}
      >
        Issue this estimate
      </Button>
    </div>
  )
}
