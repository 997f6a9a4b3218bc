import {
  answerable,
  answerTo,
  authorizedBundles,
  isLook,
  isReplaced,
  newestBundles,
  unansweredBundles,
} from '@bayledger/ledger/questions/answers'
import { cautionsOwed } from '@bayledger/ledger/questions/cautions-owed'
import { estimateIsMissing } from '@bayledger/ledger/questions/estimate-is-missing'
import { lookIsOwed } from '@bayledger/ledger/questions/look-is-owed'
import {
  authorizedCents,
  bundleMoney,
  estimateMoney,
  lookOwedCents,
  type MoneySides,
  pricedEstimate,
} from '@bayledger/ledger/questions/money'
import { namedBundle } from '@bayledger/ledger/questions/named'
import type { IssuedBundle, IssuedEstimate, OrderState } from '@bayledger/ledger/state'
import type { PricedEstimate } from '@bayledger/reckoning/estimate'
import { bundleTitle } from '@bayledger/wording/bundles'
import { cautionName, cautionWords } from '@bayledger/wording/customer-cautions'
import { english } from '@bayledger/wording/en/english'
import { shownTitle } from '@bayledger/wording/shown-estimate'
import { useState } from 'react'
import { orderMoney } from '../../../features/ledger/order-money.ts'
import { moneyWords } from '../../../lib/money-words.ts'
import { Button } from '../../../ui/button.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { FoldingSection } from '../../../ui/folding-section.tsx'
import { useTimes } from '../shop-clock.ts'
import { DecideDialog } from './decide-dialog.tsx'
import { BundleTable } from './estimate/bundle-table.tsx'
import { EstimateDifferences } from './estimate/estimate-differences.tsx'
import { BuildEstimate } from './estimate/lazy-build-estimate.tsx'
import { LinkDialog } from './link-dialog.tsx'
import type { OrderPart } from './order-part.ts'
import { settledEstimate } from './settled.ts'
import './estimate-part.css'

const answerWords = { authorized: 'Yes', declined: 'No', deferred: 'Not today' } as const

/** Nothing is sold any more once the report is sealed or the order has ended. */
const isOpenForEstimates = ({ reports, ended }: OrderState): boolean => reports.length === 0 && ended === null

/** What the findings offer, priced and frozen, and what the customer answered to exactly that version. */
export function EstimatePart({ order }: OrderPart) {
  const { state } = order
  const { diagnosis } = state
  if (diagnosis === null || diagnosis.confirmed === null || diagnosis.outdated) return null
  const newest = state.estimates.at(-1)
  const isOpen = isOpenForEstimates(state)
  if (newest === undefined && !isOpen) return null
  const isForPresent = newest?.diagnosisId === diagnosis.written.entryId && !estimateIsMissing(state)
  return (
    <FoldingSection
      title="Estimate"
      id="estimate"
      settled={settledEstimate(order)}
      note={newest === undefined ? undefined : `version ${newest.scope.revision}`}
    >
      {newest === undefined || (!isForPresent && isOpen) ? (
        <BuildEstimate order={order} />
      ) : (
        <Issued order={order} issued={newest} />
      )}
    </FoldingSection>
  )
}

function Issued({ order, issued }: OrderPart & { issued: IssuedEstimate }) {
  const [open, setOpen] = useState<'in-person' | 'telephone' | 'link' | 'revise' | null>(null)
  const { at } = useTimes()
  const { scope } = issued
  const sides = orderMoney(order)
  const [before, now] = lastTwo(order.state, sides)
  const exemption = estimateMoney(sides, scope.money)?.exemption
  const unanswered = unansweredBundles(order.state)
  const offered = scope.bundles.filter((bundle) => !isReplaced(order.state, bundle))
  const postponed = offered.filter((bundle) => answerTo(order.state, bundle)?.answer === 'deferred')
  const isOpen = isOpenForEstimates(order.state)
  const asks = unanswered.length + postponed.length > 0
  const changeable = offered.some((bundle) =>
    ['yes-only', 'no-only'].includes(answerable(order.state, bundle)),
  )
  const authorized = authorizedBundles(order.state)
  return (
    <div className="stack">
      {scope.bundles.map((bundle) => (
        <BundleLines key={bundle.bundleKey} order={order} bundle={bundle} />
      ))}
      {before === null || now === null ? null : (
        <details>
          <summary>What changed since version {before.revision}</summary>
          <EstimateDifferences before={before} after={now} />
        </details>
      )}
      <p className="estimate-total">
        <span>Estimate, with tax</span>{' '}
        <strong>{moneyWords(estimateMoney(sides, scope.money)?.totals.totalCents)}</strong>
      </p>
      {exemption === undefined ? null : <p>Exempt from sales tax, certificate {exemption}</p>}
      {authorized.length === 0 ? null : (
        <p className="estimate-total">
          <span>Authorized, with tax</span> <strong>{moneyWords(authorizedCents(order.state, sides))}</strong>
        </p>
      )}
      {lookIsOwed(order.state) ? (
        <p className="estimate-total">
          <span>Inspection, as agreed</span> <strong>{moneyWords(lookOwedCents(order.state, sides))}</strong>
        </p>
      ) : null}
      {issued.shown.map((shown) => (
        <p key={shown.written.entryId} className="quiet">
          Shown {shown.channel === 'in-person' ? 'at the desk' : `by ${shown.channel}`}{' '}
          {at(shown.written.writtenAt)}
        </p>
      ))}
      {isOpen ? (
        <div className="row">
          {asks ? (
            <Button look="main" onClick={() => setOpen('link')}>
              Send the customer a link
            </Button>
          ) : null}
          {asks || changeable ? (
            <>
              <Button onClick={() => setOpen('in-person')}>Decide here</Button>
              <Button onClick={() => setOpen('telephone')}>Decide by telephone</Button>
            </>
          ) : null}
          <Button onClick={() => setOpen('revise')}>New version</Button>
        </div>
      ) : null}
      {open === 'link' ? <LinkDialog order={order} issued={issued} onClose={() => setOpen(null)} /> : null}
      {open === 'in-person' || open === 'telephone' ? (
        <DecideDialog order={order} issued={issued} channel={open} onClose={() => setOpen(null)} />
      ) : null}
      {open === 'revise' ? (
        <Dialog title={`Version ${scope.revision + 1}`} onClose={() => setOpen(null)}>
          <BuildEstimate order={order} onIssued={() => setOpen(null)} />
        </Dialog>
      ) : null}
    </div>
  )
}

/** The version before the newest and the newest, with their money; `null` where there is none or it is not here. */
const lastTwo = ({ estimates }: OrderState, sides: MoneySides) =>
  [estimates.at(-2), estimates.at(-1)].map((issued) =>
    issued === undefined ? null : pricedEstimate(sides, issued.scope),
  ) as [PricedEstimate | null, PricedEstimate | null]

function BundleLines({ order, bundle }: OrderPart & { bundle: IssuedBundle }) {
  const decision = answerTo(order.state, bundle)
  const priced = bundleMoney(orderMoney(order), bundle.money)
  const authorized = new Set(authorizedBundles(order.state).map(({ bundleKey }) => bundleKey))
  const shown =
    decision !== null && decision.answer !== 'authorized'
      ? cautionsOwed(bundle, newestBundles(order.state), authorized)
      : []
  return (
    <article className="bundle-sheet">
      <header className="estimate-total">
        <h3>
          {priced === null ? bundleTitle(english, namedBundle(bundle)) : shownTitle(english, bundle, priced)}
          {bundle.alternativeTo === null ? '' : ' (as an alternative: only one of them is chosen)'}
        </h3>
        <span>
          <strong>{moneyWords(priced?.totals.totalCents)}</strong> ·{' '}
          {isLook(bundle)
            ? 'agreed at the write-up'
            : decision !== null
              ? `${answerWords[decision.answer]}${decision.takesBack === null ? '' : ', the Yes was taken back before any work on it'}`
              : 'no answer yet'}
        </span>
      </header>
      {priced === null ? null : (
        <BundleTable lines={priced.lines} covers={bundle.covers} taxCents={priced.totals.taxCents} />
      )}
      {shown.map((caution) => (
        <p key={caution.number}>
          {cautionWords(english.customerCautions, caution)}{' '}
          <span className="quiet">
            (
            {decision?.cautionsShown.some(({ number }) => number === caution.number)
              ? cautionName(caution)
              : 'not shown'}
            )
          </span>
        </p>
      ))}
    </article>
  )
}
