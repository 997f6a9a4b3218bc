import { type ReactNode, useId } from 'react'
import { FieldNotes, noteAttributes } from './field-parts.tsx'
import { isFull, nudge, numberFrom, type PadKey, type PadLimits, press } from './number-text.ts'
import { PressKey } from './press-key.tsx'
import './number-pad.css'

type NumberPadProps = {
  label: string
  unit: string
  /** The text typed so far. It lives with the caller, so that a half-typed figure outlasts a change of person. */
  text: string
  /** `isFull`: a key of the pad typed the last decimal there is. */
  onText: (text: string, isFull: boolean) => void
  limits?: PadLimits
  /** How far "more" and "less" move the figure; `null` for no such keys. */
  step?: number | null
  /** A key that turns the sign, for temperatures. */
  signed?: boolean
  hint?: string | undefined
  fault?: string | undefined
  /** What else may be answered in place of a figure, and the button that takes it. */
  children?: ReactNode
}

const digits: readonly PadKey[] = ['1', '2', '3', '4', '5', '6', '7', '8', '9']

/**
 * Large keys of our own for one figure. The readout is a text field, so a real keyboard types into it and a
 * screen reader reads it; the tablet's own keyboard stays down.
 */
export function NumberPad({
  label,
  unit,
  text,
  onText,
  limits = { whole: 3, decimals: 1 },
  step = 0.5,
  signed = false,
  hint,
  fault,
  children,
}: NumberPadProps) {
  const id = useId()
  const key = (padKey: PadKey, name: string, face: ReactNode = name) => (
    <PressKey
      key={padKey}
      look={padKey === 'clear' ? 'small' : 'usual'}
      name={name}
      onPress={() => {
        const next = press(text, padKey, limits)
        onText(next, /\d/.test(padKey) && next !== text && isFull(next, limits))
      }}
    >
      {face}
    </PressKey>
  )
  return (
    <fieldset className="number-pad" aria-label={label}>
      <div className="pad-side-of-keys">
        <div className="pad-readout">
          <label htmlFor={id}>{label}</label>
          <span className="pad-figure">
            <input
              {...noteAttributes(id, { hint, fault })}
              id={id}
              className="pad-entry"
              inputMode="none"
              autoComplete="off"
              value={text.replace('-', '−')}
              onChange={(event) => onText(typedOver(text, event.currentTarget.value, limits), false)}
            />
            <span className="figure-unit">{unit}</span>
          </span>
          <FieldNotes id={id} hint={hint} fault={fault} />
          <output className="for-screen-readers" htmlFor={id}>
            {numberFrom(text) === null ? '' : `${text} ${unit}`}
          </output>
        </div>
        {children === undefined ? null : <div className="pad-answers">{children}</div>}
      </div>
      <div className="pad-keys">
        {digits.map((digit) => key(digit, digit))}
        {limits.decimals > 0 ? key('.', 'point', '.') : signed ? key('sign', 'plus or minus', '±') : <span />}
        {key('0', '0')}
        {key('back', 'erase the last digit', '⌫')}
        <div className="pad-side">
          {step === null ? null : (
            <>
              <PressKey name={`${step} more`} onPress={() => onText(nudge(text, step, limits), false)}>
                +{step}
              </PressKey>
              <PressKey name={`${step} less`} onPress={() => onText(nudge(text, -step, limits), false)}>
                −{step}
              </PressKey>
            </>
          )}
          {limits.decimals > 0 && signed ? key('sign', 'plus or minus', '±') : null}
          {key('clear', 'clear')}
        </div>
      </div>
    </fieldset>
  )
}

/** What a real keyboard left in the readout, taken only if the keys themselves could have spelled it. */
function typedOver(before: string, typed: string, limits: PadLimits): string {
  const wanted = typed.replace('−', '-')
  const [whole = '', decimals = ''] = wanted.replace('-', '').split('.')
  const fits =
    /^-?\d*\.?\d*$/.test(wanted) && whole.length <= limits.whole && decimals.length <= limits.decimals
  return fits ? wanted : before
}
