import { type ReactNode, useEffect, useId, useState } from 'react'
import './folding-section.css'

type FoldingSectionProps = {
  title: string
  /** A word or two at the right of the title, such as whose it is or from when. */
  note?: ReactNode
  /** An anchor on the page: a link to it opens the part. */
  id: string
  /** What the part comes to, in a line, once nobody needs to touch it: it folds to that, and opens by its title. */
  settled: string | undefined
  children: ReactNode
}

/** A part of a sheet that is whole while somebody works on it and one line afterwards. */
export function FoldingSection({ title, note, id, settled, children }: FoldingSectionProps) {
  const headingId = useId()
  const bodyId = useId()
  const [opened, setOpened] = useState(false)
  const isFolded = settled !== undefined && !opened
  useEffect(() => {
    const openIfNamed = () => {
      if (window.location.hash === `#${id}`) setOpened(true)
    }
    openIfNamed()
    window.addEventListener('hashchange', openIfNamed)
    return () => window.removeEventListener('hashchange', openIfNamed)
  }, [id])
  return (
    <section className="section" id={id} aria-labelledby={headingId}>
      <header className="section-head">
        <h2 id={headingId}>
          {settled === undefined ? (
            title
          ) : (
            <button
              type="button"
              className="section-fold"
              aria-expanded={opened}
              aria-controls={bodyId}
              onClick={() => setOpened(!opened)}
            >
              {title}
            </button>
          )}
        </h2>
        {note === undefined ? null : <div className="section-note">{note}</div>}
      </header>
      <div id={bodyId}>{isFolded ? <p className="section-settled">{settled}</p> : children}</div>
    </section>
  )
}
