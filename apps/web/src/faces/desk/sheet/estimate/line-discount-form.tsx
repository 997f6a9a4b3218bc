import type { PricedBundle } from '@bayledger/reckoning/estimate'
import type { LineDiscount } from '@bayledger/reckoning/money/line-discounts'
import { english } from '@bayledger/wording/en/english'
import { lineWords } from '@bayledger/wording/estimate-lines'
import { shownTitle } from '@bayledger/wording/shown-estimate'
import { useState } from 'react'
import { money } from '../../../../lib/format.ts'
import { Button } from '../../../../ui/button.tsx'
import { SelectField } from '../../../../ui/select-field.tsx'
import { TextField } from '../../../../ui/text-field.tsx'
import { centsTyped } from './typed-amounts.ts'
import { useFirstList } from './use-first-list.ts'

type LineDiscountFormProps = {
  bundles: readonly PricedBundle[]
  given: readonly LineDiscount[]
  onChange: (given: readonly LineDiscount[]) => void
}

/** So much off one line, with the reason that the customer reads. Who may give how much is in the price book. */
export function LineDiscountForm({ bundles, given, onChange }: LineDiscountFormProps) {
  const { form, toFirst } = useFirstList()
  const [at, setAt] = useState<string | null>(null)
  const [off, setOff] = useState('')
  const [reason, setReason] = useState('')
  const lines = bundles
    .filter(({ works }) => works[0]?.kind !== 'look')
    .flatMap((bundle) =>
      bundle.money.lines
        .filter(({ amountCents, kind }) => amountCents > 0 && kind !== 'deposit')
        .map((line) => ({ bundle, line, value: `${bundle.bundleKey}/${line.lineKey}` })),
    )
    .filter(({ line }) => line.lineKey !== 'supplies' && !line.lineKey.startsWith('fee.'))
  const chosen = lines.find(({ value }) => value === at)
  const cents = centsTyped(off)
  const whyNot =
    chosen === undefined
      ? 'Choose the line.'
      : cents === null || cents === 0 || cents > chosen.line.amountCents
        ? `Enter an amount up to ${money(chosen.line.amountCents)}.`
        : reason.trim() === ''
          ? 'Enter the reason.'
          : undefined
  const give = () => {
    if (chosen === undefined || cents === null) return
    const { bundleKey } = chosen.bundle
    const { lineKey } = chosen.line
    const others = given.filter((one) => one.bundleKey !== bundleKey || one.lineKey !== lineKey)
    onChange([...others, { bundleKey, lineKey, reason: reason.trim(), cents }])
    setAt(null)
    setOff('')
    setReason('')
    toFirst()
  }
  const takeBack = () => {
    onChange([])
    toFirst()
  }
  return (
    <div ref={form} className="stack">
      <SelectField
        label="Discount on one line"
        hint="Who may give how much is in the price book."
        options={lines.map(({ bundle, line, value }) => ({
          value,
          label: `${lineWords(english.estimateLines, line)} · ${money(line.amountCents)} · ${shownTitle(english, bundle, bundle.money)}`,
        }))}
        value={at}
        onChange={setAt}
      />
      {at === null ? null : (
        <>
          <div className="row">
            <TextField label="Off, $" inputMode="decimal" value={off} onChange={setOff} />
            <TextField
              label="Reason, as the customer reads it"
              maxLength={120}
              value={reason}
              onChange={setReason}
            />
          </div>
          <Button whyNot={whyNot} onClick={give}>
            Give this discount
          </Button>
        </>
      )}
      {given.length === 0 ? null : (
        <Button onClick={takeBack}>Take back the discounts on single lines</Button>
      )}
    </div>
  )
}
