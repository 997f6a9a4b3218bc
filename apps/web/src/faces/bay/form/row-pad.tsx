import { type ReactNode, useRef } from 'react'
import { ScanButton } from '../../../features/scanning/scan-button.tsx'
import { Button } from '../../../ui/button.tsx'
import { NumberPad } from '../../../ui/number-pad.tsx'
import { noneOfThem, type RowOption, toggled } from '../../../ui/rows/rows.ts'
import { TextField } from '../../../ui/text-field.tsx'
import { HexPad } from './hex-pad.tsx'
import { isAnswered, type Row, rowFault } from './rows.ts'

type RowPadProps = {
  row: Row
  value: string | null | undefined
  /** `goOn`: this answers the row, the next one comes up. */
  onValue: (value: string | null | undefined, goOn: boolean) => void
  next: Row | null
  recordWord: string
  whyNot: string | undefined
  busy: boolean
  onRecord: () => Promise<void>
}

/** The pad for one row. Enter on a real keyboard, or a scanner's own, goes on like the wide button. */
export function RowPad(props: RowPadProps) {
  const { row, value, onValue, next, whyNot, busy, onRecord } = props
  return (
    <form
      className="row-pad-form"
      aria-busy={busy}
      onSubmit={(event) => {
        event.preventDefault()
        if (!isAnswered(row, value)) return
        if (next !== null) onValue(value, true)
        else if (whyNot === undefined && !busy) void onRecord()
      }}
    >
      <Keys {...props} />
    </form>
  )
}

/** Keys for a figure, large choices, or a field for what can be pasted or scanned. */
function Keys(props: RowPadProps) {
  const { row, value, onValue } = props
  if (row.kind === 'number')
    return (
      <NumberPad
        label={row.label}
        unit={row.unit}
        text={value ?? ''}
        onText={onValue}
        limits={row.limits ?? { whole: 3, decimals: 1 }}
        step={row.step === undefined ? null : row.step}
        signed={row.signed ?? false}
        hint={row.hint}
        fault={rowFault(row, value)}
      >
        <OptionList
          options={row.suggestions ?? []}
          chosen={value}
          onPick={(picked) => onValue(picked, true)}
        />
        <Onward {...props} />
      </NumberPad>
    )
  if (row.kind === 'text' && row.hex)
    return (
      <HexPad
        label={row.label}
        hint={row.hint}
        fault={rowFault(row, value)}
        suggestions={row.suggestions ?? []}
        scan={row.scan}
        text={value ?? ''}
        onText={(text) => onValue(text, false)}
        onPick={(picked) => onValue(picked, true)}
      >
        <Onward {...props} />
      </HexPad>
    )
  return (
    <div className="row-pad">
      {row.kind === 'text' ? (
        <TextPad row={row} value={value} onValue={onValue} />
      ) : (
        <Options row={row} value={value} onValue={onValue} />
      )}
      <div className="pad-answers">
        <Onward {...props} />
      </div>
    </div>
  )
}

/** Advances to the next open row; when none is left, or the step can be recorded already, shows the wide button. */
function Onward({ row, value, onValue, next, recordWord, whyNot, busy, onRecord }: RowPadProps): ReactNode {
  const record = (
    <Button
      look={next === null ? 'wide' : 'plain'}
      busy={busy}
      whyNot={whyNot}
      onClick={() => void onRecord()}
    >
      {recordWord}
    </Button>
  )
  return (
    <>
      {next !== null && isAnswered(row, value) ? (
        <Button look="wide" onClick={() => onValue(value, true)}>
          Next: {next.label}
        </Button>
      ) : null}
      {row.optional === undefined || value === null ? null : (
        <Button onClick={() => onValue(null, true)}>{sentenceCase(row.optional)}</Button>
      )}
      {next === null || whyNot === undefined ? record : null}
    </>
  )
}

type PartProps<K extends Row['kind']> = Pick<RowPadProps, 'value' | 'onValue'> & {
  row: Extract<Row, { kind: K }>
}

function Options({ row, value, onValue }: PartProps<'choice' | 'several'>) {
  const chosen = (value ?? '').split(',')
  return (
    <fieldset className="row-options-field" aria-label={row.label}>
      <p className="row-options-label" aria-hidden="true">
        {row.label}
      </p>
      {row.kind === 'choice' && row.hint !== undefined ? (
        <p className="row-options-hint">{row.hint}</p>
      ) : null}
      <ul className={row.kind === 'choice' && row.isShort ? 'row-options row-options-short' : 'row-options'}>
        {row.kind === 'several' ? (
          <OptionButton
            option={{ value: noneOfThem, label: sentenceCase(row.noneWord) }}
            isChosen={value === noneOfThem}
            onPick={() => onValue(noneOfThem, true)}
          />
        ) : null}
        {row.options.map((option) => (
          <OptionButton
            key={option.value}
            option={option}
            isChosen={chosen.includes(option.value)}
            onPick={() =>
              row.kind === 'several'
                ? onValue(toggled(value, option.value), false)
                : onValue(option.value, true)
            }
          />
        ))}
      </ul>
    </fieldset>
  )
}

function OptionButton(props: { option: RowOption; isChosen: boolean; onPick: () => void }) {
  const { option, isChosen, onPick } = props
  return (
    <li>
      <button type="button" className="row-option" aria-pressed={isChosen} onClick={onPick}>
        {option.label}
        {option.detail === undefined ? null : <span className="row-option-detail">{option.detail}</span>}
      </button>
    </li>
  )
}

type OptionListProps = {
  options: readonly RowOption[]
  chosen: string | null | undefined
  onPick: (value: string) => void
}

function OptionList({ options, chosen, onPick }: OptionListProps) {
  if (options.length === 0) return null
  return (
    <ul className="row-options">
      {options.map((option) => (
        <OptionButton
          key={option.value}
          option={option}
          isChosen={option.value === chosen}
          onPick={() => onPick(option.value)}
        />
      ))}
    </ul>
  )
}

function TextPad({ row, value, onValue }: PartProps<'text'>) {
  const field = useRef<HTMLInputElement>(null)
  return (
    <div className="row-text">
      <OptionList options={row.suggestions ?? []} chosen={value} onPick={(picked) => onValue(picked, true)} />
      <div className="row-text-ways">
        {row.paste && canPaste ? (
          <Button
            look="wide"
            onClick={async () => onValue((await navigator.clipboard.readText()).trim(), true)}
          >
            Paste
          </Button>
        ) : null}
        {row.scan === undefined ? null : (
          <ScanButton
            target={row.scan}
            className="button button-plain"
            onScan={(scanned) => onValue(scanned, true)}
            onTypeInstead={() => field.current?.focus()}
          />
        )}
      </div>
      <TextField
        key={row.key}
        ref={field}
        label={row.label}
        hint={row.hint}
        fault={rowFault(row, value)}
        value={value ?? ''}
        onChange={(text) => onValue(text, false)}
        {...(row.exact ? { exact: true } : {})}
        {...(row.paste ? { autoFocus: true, inputMode: 'none' } : {})}
      />
    </div>
  )
}

/** A browser gives the clipboard to pages from a secure address only; a scanner types, and needs none. */
const canPaste = globalThis.navigator?.clipboard?.readText !== undefined

const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
