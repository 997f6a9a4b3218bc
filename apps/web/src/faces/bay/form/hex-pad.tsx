import { type ReactNode, useId, useRef } from 'react'
import { ScanButton } from '../../../features/scanning/scan-button.tsx'
import type { ScanTarget } from '../../../features/scanning/scan-target.ts'
import { FieldNotes, noteAttributes } from '../../../ui/field-parts.tsx'
import { PressKey } from '../../../ui/press-key.tsx'
import type { RowOption } from '../../../ui/rows/rows.ts'
import '../../../ui/number-pad.css'

type HexPadProps = {
  label: string
  hint?: string | undefined
  fault?: string | undefined
  suggestions: readonly RowOption[]
  /** What the camera may fill in. */
  scan?: ScanTarget | undefined
  text: string
  onText: (text: string) => void
  onPick: (value: string) => void
  children: ReactNode
}

const order = ['1', '2', '3', 'A', 'B', 'C', '4', '5', '6', 'D', 'E', 'F', '7', '8', '9', '0']

/** A sensor's ID: picked where it is known, else pasted or scanned into the field, else typed with these keys. */
export function HexPad({
  label,
  hint,
  fault,
  suggestions,
  scan,
  text,
  onText,
  onPick,
  children,
}: HexPadProps) {
  const id = useId()
  const field = useRef<HTMLInputElement>(null)
  return (
    <fieldset className="hex-pad" aria-label={label}>
      {suggestions.length === 0 ? null : (
        <ul className="hex-suggestions">
          {suggestions.map((option) => (
            <li key={option.value}>
              <button
                type="button"
                className="row-option"
                aria-pressed={option.value === text}
                onClick={() => onPick(option.value)}
              >
                {option.label}
              </button>
            </li>
          ))}
        </ul>
      )}
      <div className="hex-side">
        <div>
          <label htmlFor={id}>{label}</label>
          <input
            {...noteAttributes(id, { hint, fault })}
            id={id}
            ref={field}
            className="hex-entry exact"
            inputMode="none"
            autoComplete="off"
            autoCapitalize="characters"
            spellCheck={false}
            value={text}
            onChange={(event) => onText(event.currentTarget.value)}
          />
          <FieldNotes id={id} hint={hint} fault={fault} />
        </div>
        <div className="pad-answers">{children}</div>
      </div>
      <div className="hex-keys">
        {order.map((sign) => (
          <PressKey key={sign} name={sign} onPress={() => onText(text + sign)}>
            {sign}
          </PressKey>
        ))}
        <PressKey name="erase the last sign" onPress={() => onText(text.slice(0, -1))}>
          ⌫
        </PressKey>
        <PressKey look="small" name="clear" onPress={() => onText('')}>
          clear
        </PressKey>
        {scan === undefined ? null : (
          <ScanButton
            target={scan}
            words="short"
            className="pad-key pad-key-small hex-scan"
            onScan={onPick}
            onTypeInstead={() => field.current?.focus()}
          />
        )}
      </div>
    </fieldset>
  )
}
