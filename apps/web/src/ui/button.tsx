import { type ComponentProps, useId } from 'react'
import './button.css'

type ButtonProps = ComponentProps<'button'> & {
  /** `wide`: the one thing to do next, as wide as its column; `main`: the same beside other controls. */
  look?: 'wide' | 'main' | 'plain'
  /** Why it cannot be pressed now. The button stays reachable, so that a keyboard or a screen reader finds the reason. */
  whyNot?: string | undefined
  /** Its work is under way: further presses do nothing. */
  busy?: boolean
}

export function Button({
  look = 'plain',
  whyNot,
  busy = false,
  onClick,
  type = 'button',
  ...rest
}: ButtonProps) {
  const reasonId = useId()
  const held = whyNot !== undefined || busy
  const button = (
    <button
      {...rest}
      type={held && type === 'submit' ? 'button' : type}
      className={`button button-${look}${rest.className ? ` ${rest.className}` : ''}`}
      aria-disabled={held || undefined}
      aria-busy={busy || undefined}
      aria-describedby={whyNot === undefined ? rest['aria-describedby'] : reasonId}
      onClick={(event) => {
        if (held) event.preventDefault()
        else onClick?.(event)
      }}
    />
  )
  if (whyNot === undefined) return button
  return (
    <span className={`button-with-reason button-with-reason-${look}`}>
      {button}
      <span id={reasonId} className="button-reason">
        {whyNot}
      </span>
    </span>
  )
}
