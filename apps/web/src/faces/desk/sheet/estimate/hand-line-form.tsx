import { type HandLine, handBundle } from '@bayledger/reckoning/money/hand-bundles'
import type { OfferedBundle } from '@bayledger/reckoning/money/offer'
import type { PriceList } from '@bayledger/reckoning/money/price-list'
import { useState } from 'react'
import { v7 } from 'uuid'
import { money } from '../../../../lib/format.ts'
import { Button } from '../../../../ui/button.tsx'
import { ChoiceGroup } from '../../../../ui/choice-group.tsx'
import { SelectField } from '../../../../ui/select-field.tsx'
import { TextField } from '../../../../ui/text-field.tsx'
import { centsTyped, quantityTyped } from './typed-amounts.ts'
import { useFirstList } from './use-first-list.ts'

type HandLineFormProps = { prices: PriceList; onAdd: (bundle: OfferedBundle) => void }

const kinds = [
  { value: 'outside', label: 'Work of another shop' },
  { value: 'labor', label: 'Work of ours' },
  { value: 'part', label: 'Part' },
  { value: 'fee', label: 'Fee' },
] as const

const ownWords = 'own'

/** A line from the price book or in the advisor's own words; the customer decides on it by itself. */
export function HandLineForm({ prices, onAdd }: HandLineFormProps) {
  const items = (prices.items ?? []).filter((item) => item.kind !== 'tire')
  const { form, toFirst } = useFirstList()
  const [key, setKey] = useState<string | null>(null)
  const [kind, setKind] = useState<HandLine['kind'] | null>(null)
  const [words, setWords] = useState('')
  const [price, setPrice] = useState('')
  const [quantity, setQuantity] = useState('1')
  const [oldPart, setOldPart] = useState<'here' | 'later' | null>(null)
  const item = items.find((one) => one.key === key)
  const depositCents = item?.depositCents ?? null
  const choose = (value: string) => {
    const chosen = items.find((one) => one.key === value)
    setKey(value)
    setKind(chosen?.kind === 'tire' ? null : (chosen?.kind ?? null))
    setWords(chosen?.words ?? '')
    setPrice(chosen === undefined ? '' : (chosen.cents / 100).toFixed(2))
    setQuantity('1')
    setOldPart(null)
  }
  const unitCents = centsTyped(price)
  const quantityHundredths = quantityTyped(quantity)
  const whyNot =
    kind === null
      ? 'Choose what it is.'
      : words.trim() === ''
        ? 'Enter what the customer reads.'
        : unitCents === null
          ? 'Enter the price, as 12.50.'
          : quantityHundredths === null
            ? 'Enter a quantity from 0.01 to 999.'
            : depositCents !== null && oldPart === null
              ? 'Say where the old part is.'
              : undefined
  const add = () => {
    if (kind === null || unitCents === null || quantityHundredths === null) return
    onAdd(
      handBundle({
        bundleKey: `hand.${v7()}`,
        kind,
        words: words.trim(),
        itemKey: item?.key ?? null,
        quantityHundredths,
        unitCents,
        wheels: [],
        depositCents,
        oldPartIsHere: oldPart === 'here',
      }),
    )
    choose(ownWords)
    setKey(null)
    toFirst()
  }
  return (
    <div ref={form} className="stack">
      <SelectField
        label="Line by hand"
        options={[
          ...items.map((one) => ({ value: one.key, label: `${one.words} · ${money(one.cents)}` })),
          { value: ownWords, label: 'In your own words' },
        ]}
        value={key}
        onChange={choose}
      />
      {key === null ? null : (
        <>
          {item === undefined ? (
            <ChoiceGroup label="What it is" options={kinds} value={kind} onChange={setKind} />
          ) : null}
          <TextField label="What the customer reads" maxLength={120} value={words} onChange={setWords} />
          <div className="row">
            <TextField label="Quantity" inputMode="decimal" value={quantity} onChange={setQuantity} />
            <TextField label="Price of one, $" inputMode="decimal" value={price} onChange={setPrice} />
          </div>
          {depositCents === null ? null : (
            <ChoiceGroup
              label={`Deposit of ${money(depositCents)} each until the old part is here`}
              options={[
                { value: 'later', label: 'The old part comes later: charge it' },
                { value: 'here', label: 'The old part is here: give it back at once' },
              ]}
              value={oldPart}
              onChange={setOldPart}
              flow="column"
            />
          )}
          <Button whyNot={whyNot} onClick={add}>
            Add this line
          </Button>
        </>
      )}
    </div>
  )
}
