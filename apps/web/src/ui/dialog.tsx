import { type KeyboardEvent, type ReactNode, useId, useLayoutEffect, useRef } from 'react'
import { Button } from './button.tsx'
import './dialog.css'

type DialogProps = {
  title: string
  /** By its button or the Escape key. The caller then stops rendering the dialog. */
  onClose: () => void
  closeWord?: string
  children: ReactNode
}

const typedTypes = ['text', 'tel', 'email', 'number', 'time', 'date', 'password']

/** Enter in a field does what the dialog's one main button does, as people expect of a form. */
const pressMainOnEnter = ({ key, target, currentTarget }: KeyboardEvent<HTMLDialogElement>) => {
  if (key !== 'Enter' || !(target instanceof HTMLInputElement) || !typedTypes.includes(target.type)) return
  const mains = currentTarget.querySelectorAll<HTMLElement>('.button-main')
  if (mains.length === 1) mains[0]?.click()
}

/** A modal question. The browser keeps focus inside and restores it afterwards. */
export function Dialog({ title, onClose, closeWord = 'Close', children }: DialogProps) {
  const element = useRef<HTMLDialogElement>(null)
  const titleId = useId()
  // Close it before it is removed from the page: only then does the browser restore focus.
  useLayoutEffect(() => {
    const dialog = element.current
    dialog?.showModal()
    // With a keyboard one goes on typing. Under a finger a field in focus would bring up keys over the question.
    if (window.matchMedia('(pointer: fine)').matches)
      dialog?.querySelector<HTMLElement>('input, select, textarea')?.focus()
    return () => dialog?.close()
  }, [])
  return (
    <dialog
      className="dialog"
      ref={element}
      aria-labelledby={titleId}
      onKeyDown={pressMainOnEnter}
      onCancel={(event) => {
        event.preventDefault()
        onClose()
      }}
    >
      <header className="dialog-head">
        <h2 id={titleId}>{title}</h2>
        <Button onClick={onClose}>{closeWord}</Button>
      </header>
      {children}
    </dialog>
  )
}
