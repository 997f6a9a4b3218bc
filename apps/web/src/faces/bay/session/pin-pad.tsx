import { useEffect, useId, useRef } from 'react'
import { PressKey } from '../../../ui/press-key.tsx'

const keys = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const

/** Six digits, shown as dots; a real keyboard types into the same field. */
export function PinPad({ pin, onPin }: { pin: string; onPin: (pin: string) => void }) {
  const id = useId()
  const field = useRef<HTMLInputElement>(null)
  useEffect(() => field.current?.focus(), [])
  const take = (typed: string) => {
    if (/^\d{0,6}$/.test(typed)) onPin(typed)
  }
  return (
    <fieldset className="pin-pad" aria-label="PIN pad">
      <label htmlFor={id} className="for-screen-readers">
        PIN
      </label>
      <input
        ref={field}
        id={id}
        className="pin-dots"
        type="password"
        inputMode="none"
        autoComplete="off"
        maxLength={6}
        value={pin}
        onChange={(event) => take(event.currentTarget.value)}
      />
      <div className="pin-keys">
        {keys.map((digit) => (
          <PressKey key={digit} name={digit} onPress={() => take(pin + digit)}>
            {digit}
          </PressKey>
        ))}
        <PressKey look="small" name="clear" onPress={() => onPin('')}>
          clear
        </PressKey>
        <PressKey name="0" onPress={() => take(`${pin}0`)}>
          0
        </PressKey>
        <PressKey name="erase the last digit" onPress={() => onPin(pin.slice(0, -1))}>
          ⌫
        </PressKey>
      </div>
    </fieldset>
  )
}
