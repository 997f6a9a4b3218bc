import { type ReactNode, useId, useLayoutEffect, useRef } from 'react'
import { Button } from './button.tsx'
import './dialog.css'

type DialogProps = {
  title: string
  /** By its button or the Escape key. The caller then stops rendering the dialog. */
  onClose: () => void
  closeWord?: string
  children: ReactNode
}

/** A modal question. The browser keeps focus inside and restores it afterwards. */
export function Dialog({ title, onClose, closeWord = 'Close', children }: DialogProps) {
  const element = useRef<HTMLDialogElement>(null)
  const titleId = useId()
  // Close it before it is removed from the page: only then does the browser restore focus.
  useLayoutEffect(() => {
    const dialog = element.current
    dialog?.showModal()
    return () => dialog?.close()
  }, [])
  return (
    <dialog
      className="dialog"
      ref={element}
      aria-labelledby={titleId}
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
