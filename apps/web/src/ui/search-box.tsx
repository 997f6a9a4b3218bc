import { type KeyboardEvent, type RefObject, useEffect, useEffectEvent, useId, useRef, useState } from 'react'
import './field-parts.css'
import './search-box.css'

export type SearchHit = { id: string; label: string; detail: string }

type SearchBoxProps = {
  label: string
  placeholder: string
  text: string
  onText: (text: string) => void
  /** What the caller found for the text. */
  hits: readonly SearchHit[]
  /** The hits are still those of an earlier text: Enter waits for the new ones. */
  isSearching: boolean
  /** `isOther`: Shift was held, for what else can be done with a hit. */
  onPick: (hit: SearchHit, isOther: boolean) => void
  /** What Enter and Shift+Enter do, below the list. */
  keys: string
  /** Shown in place of the list while it is empty: nothing was found, or the search is under way. */
  whenEmpty: string
}

/**
 * One box that finds anything. The key `/` focuses it from everywhere but a field; the arrow keys choose, Enter picks what is
 * chosen or else the first, Escape closes the list. Roles and keys follow the editable combobox with a listbox of the WAI-ARIA Authoring
 * Practices: focus stays in the input, and `aria-activedescendant` names the chosen hit.
 */
export function SearchBox({
  label,
  placeholder,
  text,
  onText,
  hits,
  isSearching,
  onPick,
  keys,
  whenEmpty,
}: SearchBoxProps) {
  const input = useRef<HTMLInputElement>(null)
  const id = useId()
  const [isOpen, setOpen] = useState(false)
  const [chosen, setChosen] = useState(-1)
  /** Enter was pressed before the hits were there: whether it was with Shift. */
  const [isAwaited, setAwaited] = useState<boolean | null>(null)
  useSlashKey(input)
  const listId = `${id}-list`
  const hitId = (index: number) => `${id}-hit-${index}`
  const active = isOpen && chosen < hits.length ? chosen : -1

  const close = () => {
    setOpen(false)
    setChosen(-1)
    setAwaited(null)
  }
  const pick = (hit: SearchHit | undefined, isOther: boolean) => {
    if (hit === undefined) return
    close()
    onPick(hit, isOther)
  }
  const pickFirst = useEffectEvent((isOther: boolean) => {
    setAwaited(null)
    pick(hits[0], isOther)
  })
  useEffect(() => {
    if (isAwaited !== null && !isSearching) pickFirst(isAwaited)
  }, [isAwaited, isSearching])
  const onKeyDown = (event: KeyboardEvent) => {
    const last = hits.length - 1
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault()
      setOpen(true)
      const isDown = event.key === 'ArrowDown'
      const next = isDown ? (active >= last ? 0 : active + 1) : active <= 0 ? last : active - 1
      setChosen(next)
      document.getElementById(hitId(next))?.scrollIntoView({ block: 'nearest' })
    } else if (event.key === 'Enter' && isOpen) {
      event.preventDefault()
      if (active >= 0) pick(hits[active], event.shiftKey)
      else setAwaited(event.shiftKey)
    } else if (event.key === 'Escape') close()
  }

  return (
    <div className="search-box">
      <label className="search-label" htmlFor={id}>
        {label}
      </label>
      <div className="search-field">
        <input
          ref={input}
          id={id}
          className="entry search-entry"
          role="combobox"
          aria-expanded={isOpen}
          aria-controls={listId}
          aria-autocomplete="list"
          aria-activedescendant={active < 0 ? undefined : hitId(active)}
          autoComplete="off"
          placeholder={placeholder}
          value={text}
          onChange={(event) => {
            onText(event.target.value)
            setOpen(event.target.value !== '')
            setChosen(-1)
            setAwaited(null)
          }}
          onKeyDown={onKeyDown}
          onBlur={close}
        />
        <span className="search-key" aria-hidden="true">
          /
        </span>
        <div className="search-list" hidden={!isOpen}>
          <div id={listId} role="listbox" aria-label={label}>
            {hits.map((hit, index) => (
              // The input handles the keys; this is for a pointer, which must not take focus away from the input.
              // biome-ignore lint/a11y/useKeyWithClickEvents: see above
              <div
                key={hit.id}
                id={hitId(index)}
                className="search-hit"
                role="option"
                tabIndex={-1}
                aria-selected={index === active}
                onPointerDown={(event) => event.preventDefault()}
                onClick={(event) => pick(hit, event.shiftKey)}
              >
                <span>{hit.label}</span>
                <span className="quiet">{hit.detail}</span>
              </div>
            ))}
          </div>
          <p className="search-empty" role="status">
            {hits.length === 0 ? whenEmpty : keys}
          </p>
        </div>
      </div>
    </div>
  )
}

function useSlashKey(input: RefObject<HTMLInputElement | null>): void {
  useEffect(() => {
    const onKey = (event: globalThis.KeyboardEvent) => {
      const inField =
        event.target instanceof Element && event.target.closest('input, textarea, select, [contenteditable]')
      if (event.key !== '/' || inField || event.ctrlKey || event.metaKey || event.altKey) return
      event.preventDefault()
      input.current?.focus()
      input.current?.select()
    }
    document.addEventListener('keydown', onKey)
    return () => document.removeEventListener('keydown', onKey)
  }, [input])
}
