import { type ReactNode, useId } from 'react'
import './section.css'

type SectionProps = {
  title: string
  /** A word or two at the right of the title, such as whose it is or from when. */
  note?: ReactNode
  /** An anchor on the page. */
  id?: string
  children: ReactNode
}

/** A part of a sheet: a firm rule, its title, its lines. */
export function Section({ title, note, id, children }: SectionProps) {
  const headingId = useId()
  return (
    <section className="section" id={id} aria-labelledby={headingId}>
      <header className="section-head">
        <h2 id={headingId}>{title}</h2>
        {note === undefined ? null : <div className="section-note">{note}</div>}
      </header>
      {children}
    </section>
  )
}

/** Names and values in two columns, one ruled line each. */
export function Lines({ children }: { children: ReactNode }) {
  return <dl className="lines">{children}</dl>
}

export function Line({ name, children }: { name: string; children: ReactNode }) {
  return (
    <div className="line">
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  )
}
