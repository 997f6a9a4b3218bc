import { openedTires } from '@bayledger/ledger/questions/authorized-works'
import { agreedSearches } from '@bayledger/ledger/questions/money'
import { namedBundle } from '@bayledger/ledger/questions/named'
import { estimatePayload } from '@bayledger/ledger/subjects/consent/estimate-payload'
import type { OfferedBundle } from '@bayledger/reckoning/money/offer'
import { offerBundles } from '@bayledger/reckoning/money/offer-bundles'
import { priceEstimate } from '@bayledger/reckoning/money/price-estimate'
import { unsoldOffers } from '@bayledger/reckoning/money/unsold-offers'
import { bundleReason, bundleTitle } from '@bayledger/wording/bundles'
import { english } from '@bayledger/wording/en/english'
import { wheelList } from '@bayledger/wording/wheels'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { draftEntry } from '../../../features/ledger/draft-entry.ts'
import { orderMoney } from '../../../features/ledger/order-money.ts'
import { moneySealer } from '../../../features/ledger/seal-money.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { priceBookIn, pricesToday } from '../../../features/settings/price-book.ts'
import { settingsQuery } from '../../../features/settings/queries.ts'
import { money } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { CheckGroup } from '../../../ui/choice-group.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { SelectField } from '../../../ui/select-field.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import type { OrderPart } from './order-part.ts'
import './estimate-part.css'

/** Turns what the confirmed findings offer into a priced version; the advisor leaves out what is not wanted. */
export function BuildEstimate({ order, onIssued }: OrderPart & { onIssued?: () => void }) {
  const { state } = order
  const settings = useQuery(settingsQuery)
  const prices = pricesToday(settings.data, new Date())
  const discounts = priceBookIn(settings.data)?.discounts ?? []
  const [given, setGiven] = useState('')
  const [left, setLeft] = useState<readonly string[]>([])
  const [readyAt, setReadyAt] = useState('')
  const write = useWriteEntries(order.orderId)
  const sheet = state.sheet?.sheet
  if (settings.isError)
    return <ProblemNotice problem={problemText(settings.error)} onRetry={() => void settings.refetch()} />
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
  const offered = offerBundles({
    diagnosis: state.diagnosis.diagnosis,
    sheet,
    prices,
    look: state.authority.look?.lookFee ?? 'waived',
    opened: openedTires(state),
  })
  const kept = offered.filter(
    (bundle) =>
      staysOn(bundle) ||
      (!left.includes(bundle.bundleKey) &&
        !(bundle.alternativeTo !== null && left.includes(bundle.alternativeTo))),
  )
  const estimate = priceEstimate({
    bundles: kept,
    prices,
    revision: state.estimates.length + 1,
    agreed: agreedSearches(state, orderMoney(order)),
    discount: discounts.find(({ key }) => key === given) ?? null,
    readyAt:
      readyAt === '' ? null : new Date(`${new Date().toLocaleDateString('en-CA')}T${readyAt}`).toISOString(),
  })
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
                ? bundleReason(english, bundle, state.diagnosis?.diagnosis.findings ?? [])
                : 'In place of the one above',
          }
        })}
        values={kept.map(({ bundleKey }) => bundleKey)}
        onChange={(values) =>
          setLeft(offered.map(({ bundleKey }) => bundleKey).filter((key) => !values.includes(key)))
        }
      />
      {unsoldOffers(state.diagnosis.diagnosis.findings, offered).map(({ offer, wheels }) => (
        <p key={offer} className="quiet">
          {english.unsoldOffers[offer](wheelList(english.wheels, wheels))}
        </p>
      ))}
      {discounts.length === 0 ? null : (
        <SelectField
          label="Discount"
          hint="It is printed under its name. Who may give how much is in the price book."
          options={[
            { value: '', label: 'none' },
            ...discounts.map(({ key, words, percentThousandths }) => ({
              value: key,
              label: `${words} · ${percentThousandths / 1_000} %`,
            })),
          ]}
          value={given}
          onChange={setGiven}
        />
      )}
      <TextField label="Ready by" type="time" value={readyAt} onChange={setReadyAt} />
      <p className="estimate-total">
        <span>With tax</span> <strong>{money(estimate.money.totals.totalCents)}</strong>
      </p>
      {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
      <Button
        look="main"
        busy={write.isPending}
        whyNot={kept.length === 0 ? 'Keep at least one line.' : undefined}
        onClick={issue}
      >
        Issue this estimate
      </Button>
    </div>
  )
}

/** A line for safety is the customer's to decline, and the inspection was agreed to before. */
const staysOn = ({ safety, alternativeTo, works }: OfferedBundle): boolean =>
  (safety && alternativeTo === null) || works.every(({ kind }) => kind === 'look')
