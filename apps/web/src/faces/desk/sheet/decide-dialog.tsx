import { canonicalText } from '@bayledger/ledger/digests'
import {
  answerable,
  answerTo,
  authorizedBundles,
  isReplaced,
  newestBundles,
  unansweredBundles,
} from '@bayledger/ledger/questions/answers'
import { cautionsOwed } from '@bayledger/ledger/questions/cautions-owed'
import type { IssuedBundle, IssuedEstimate, OrderState } from '@bayledger/ledger/state'
import { english } from '@bayledger/wording/en/english'
import type { CustomerLanguage, LanguageCode } from '@bayledger/wording/language'
import { type ShownBundle, shownEstimate } from '@bayledger/wording/shown-estimate'
import { useState } from 'react'
import { draftEntry, personal, sealSide } from '../../../features/ledger/draft-entry.ts'
import { orderMoney } from '../../../features/ledger/order-money.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { CheckGroup, ChoiceGroup } from '../../../ui/choice-group.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { SignaturePad } from '../../../ui/signature-pad.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { useShopClock } from '../shop-clock.ts'
import { whoDecides } from '../who-decides.ts'
import { aroundScript, scriptFor } from './consent-script.ts'
import { BundleQuestion } from './decided-bundle.tsx'
import {
  answerFor,
  blankDecision,
  consentOf,
  type DecisionChannel,
  type DecisionForm,
  missingInDecision,
  withGiven,
} from './decision-form.ts'
import type { OrderPart } from './order-part.ts'
import { useCustomerLanguage } from './use-customer-language.ts'

type DecideProps = OrderPart & {
  issued: IssuedEstimate
  channel: DecisionChannel
  onClose: () => void
}

const answers = [
  { value: 'authorized', label: 'Yes' },
  { value: 'declined', label: 'No' },
  { value: 'deferred', label: 'Not today' },
] as const

/** After a No there is only a Yes to record. */
const onlyYes = [{ value: 'authorized', label: 'Yes, after a No' }] as const

/** After a Yes, while no work on it was begun, there is only a No to record. */
const onlyNo = [{ value: 'declined', label: 'No, the Yes is taken back' }] as const

/** What needs an answer now, what was answered with No and may become a Yes, and a Yes that may be taken back. */
const askedBundles = (state: OrderState, shown: readonly ShownBundle[]) => {
  const waiting = unansweredBundles(state)
  const ofKeys = (bundles: readonly IssuedBundle[]) =>
    shown.filter((one) => bundles.some(({ bundleKey }) => bundleKey === one.bundleKey))
  const newest = newestBundles(state).filter((bundle) => !isReplaced(state, bundle))
  return {
    required: ofKeys(
      newest.filter((bundle) => waiting.includes(bundle) || answerTo(state, bundle)?.answer === 'deferred'),
    ),
    reversible: ofKeys(newest.filter((bundle) => answerable(state, bundle) === 'yes-only')),
    returnable: ofKeys(newest.filter((bundle) => answerable(state, bundle) === 'no-only')),
  }
}

/** Consent at the desk with a signature, or by telephone with a script that is filled in. */
export function DecideDialog({ order, issued, channel, onClose }: DecideProps) {
  const { scope } = issued
  const clock = useShopClock()
  const language = useCustomerLanguage(order.customer.language)
  const shown = shownEstimate(english, issued, orderMoney(order))
  const heard = language && shownEstimate(language, issued, orderMoney(order))
  const asked = askedBundles(order.state, shown?.bundles ?? [])
  const open = [...asked.required, ...asked.reversible, ...asked.returnable]
  const [form, setForm] = useState<DecisionForm>(() => blankDecision(order.customer))
  const set = (change: Partial<DecisionForm>) => setForm((before) => ({ ...before, ...change }))
  const write = useWriteEntries(order.orderId)
  const returnable = new Set(asked.returnable.map(({ bundleKey }) => bundleKey))
  const heardOf = (bundle: ShownBundle) =>
    heard?.bundles.find(({ bundleKey }) => bundleKey === bundle.bundleKey) ?? bundle
  const readOut = (words: CustomerLanguage, bundles: readonly ShownBundle[]) =>
    scriptFor(
      words.consentScript,
      aroundScript(order, issued, words, form, clock),
      bundles,
      form.given,
      returnable,
    )
  const script = language === null ? '' : readOut(language, open.map(heardOf))
  const whyNot =
    shown === null
      ? 'The prices of this estimate are not shown here.'
      : language === null
        ? 'The words in the customer’s language are not loaded yet.'
        : missingInDecision(form, channel, asked.required)
  const yes = new Set([
    ...authorizedBundles(order.state)
      .map(({ bundleKey }) => bundleKey)
      .filter((bundleKey) => form.given[bundleKey] === undefined),
    ...open
      .filter(({ bundleKey }) => form.given[bundleKey] === 'authorized')
      .map(({ bundleKey }) => bundleKey),
  ])
  const owed = (bundle: ShownBundle) => cautionsOwed(bundle, shown?.bundles ?? [], yes)

  const optionsFor = (bundle: ShownBundle) =>
    asked.reversible.includes(bundle) ? onlyYes : asked.returnable.includes(bundle) ? onlyNo : answers

  const decide = () => {
    if (form.relation === null || language === null || heard === null) return
    const read = sealSide(channel === 'telephone' ? script : canonicalText(heard))
    const who = personal(form.name.trim())
    const { consent, sides } = consentOf(form, channel)
    write.mutate(
      {
        entries: [
          draftEntry(order.orderId, 'estimate.shown', { revision: scope.revision, channel, linkId: null }),
          draftEntry(order.orderId, 'estimate.decided', {
            revision: scope.revision,
            digest: issued.digest,
            answers: open.flatMap((bundle) => {
              const answer = form.given[bundle.bundleKey]
              return answer === undefined ? [] : [answerFor(bundle.bundleKey, answer, owed(bundle))]
            }),
            by: { relation: form.relation, name: who.digest },
            consent,
            shown: read.digest,
            language: language.code,
            agreesToElectronicRecord: form.wishes.includes('electronic'),
            wantsRemovedParts: form.wishes.includes('parts'),
          }),
        ],
        sides: [who, read, ...sides],
      },
      { onSuccess: onClose },
    )
  }

  return (
    <Dialog title={channel === 'telephone' ? 'Consent by telephone' : 'Consent here'} onClose={onClose}>
      <div className="stack">
        {open.map((bundle) => (
          <BundleQuestion
            key={bundle.bundleKey}
            bundle={bundle}
            heard={heardOf(bundle)}
            language={order.customer.language}
            cautions={owed(bundle)}
            options={optionsFor(bundle)}
            answer={form.given[bundle.bundleKey] ?? null}
            onAnswer={(answer) => set({ given: withGiven(form.given, bundle, answer, asked.required) })}
          />
        ))}
        <DecisionFields
          form={form}
          set={set}
          channel={channel}
          script={script}
          inEnglish={language?.code === 'en' ? null : readOut(english, open)}
          language={order.customer.language}
          customerName={order.customer.name}
        />
        {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
        <Button look="wide" whyNot={whyNot} busy={write.isPending} onClick={decide}>
          Record the decision
        </Button>
      </div>
    </Dialog>
  )
}

type FieldsProps = {
  form: DecisionForm
  set: (change: Partial<DecisionForm>) => void
  channel: DecisionChannel
  script: string
  /** The script for the advisor, where the customer hears another language. */
  inEnglish: string | null
  language: LanguageCode
  /** Anyone other than the owner enters their own name. */
  customerName: string
}

/** Who decides, how they say so, and what else they want. */
function DecisionFields({ form, set, channel, script, inEnglish, language, customerName }: FieldsProps) {
  return (
    <>
      <ChoiceGroup
        label="Who decides?"
        options={whoDecides}
        value={form.relation}
        onChange={(relation) =>
          set(relation !== 'owner' && form.name === customerName ? { relation, name: '' } : { relation })
        }
      />
      <TextField label="Name" value={form.name} onChange={(name) => set({ name })} />
      {channel === 'telephone' ? (
        <>
          <p>
            <strong>Read out:</strong> <span lang={language}>{script}</span>
          </p>
          {inEnglish === null ? null : <p className="quiet">In English: {inEnglish}</p>}
          <TextField
            label="Number called"
            type="tel"
            value={form.number}
            onChange={(number) => set({ number })}
          />
          <TextField
            label="The answer, in their words"
            value={form.said}
            onChange={(said) => set({ said })}
          />
        </>
      ) : (
        <SignaturePad label="The customer’s signature" onChange={(signature) => set({ signature })} />
      )}
      <CheckGroup
        label="Also"
        options={[
          { value: 'electronic', label: 'Agrees to an electronic record' },
          { value: 'parts', label: 'Wants the removed parts' },
        ]}
        values={form.wishes}
        onChange={(wishes) => set({ wishes })}
      />
    </>
  )
}
