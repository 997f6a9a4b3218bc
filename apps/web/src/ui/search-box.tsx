import { type RefObject, useEffect, useRef } from 'react'
import { ComboBox, Input, Label, ListBox, ListBoxItem, Popover, Text } from 'react-aria-components'
import './field-parts.css'
import './search-box.css'

export type SearchHit = { id: string; label: string; detail: string }

type SearchBoxProps = {
  label: string
  placeholder: string
  text: string
  onText: (text: string) => void
  /** What was found for the text; the caller searches. */
  hits: readonly SearchHit[]
  onPick: (hit: SearchHit) => void
  /** Said in the list's place while it is empty: that nothing was found, or that the search is under way. */
  whenEmpty: string
}

/** One box that finds anything. The key `/` reaches it from everywhere but a field; arrows and Enter pick. */
export function SearchBox({ label, placeholder, text, onText, hits, onPick, whenEmpty }: SearchBoxProps) {
  const input = useRef<HTMLInputElement>(null)
  useSlashKey(input)
  return (
    <ComboBox
      className="search-box"
      aria-label={label}
      inputValue={text}
      onInputChange={onText}
      items={hits}
      // The server has searched already: what it found is not sifted again.
      defaultFilter={() => true}
      allowsCustomValue
      allowsEmptyCollection
      menuTrigger="input"
      value={null}
      onChange={(picked) => {
        const hit = hits.find((one) => one.id === picked)
        if (hit !== undefined) onPick(hit)
      }}
    >
      <Label className="search-label">{label}</Label>
      <Input ref={input} className="entry search-entry" placeholder={placeholder} />
      <span className="search-key" aria-hidden="true">
        /
      </span>
      <Popover className="search-list" offset={0}>
        <ListBox<SearchHit> renderEmptyState={() => <p className="search-empty">{whenEmpty}</p>}>
          {(hit) => (
            <ListBoxItem className="search-hit" textValue={hit.label}>
              <Text slot="label">{hit.label}</Text>
              <Text slot="description" className="quiet">
                {hit.detail}
              </Text>
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  )
}

function useSlashKey(input: RefObject<HTMLInputElement | null>): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
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
