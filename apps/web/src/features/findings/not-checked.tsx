import type { Evidence } from '@bayledger/reckoning/evidence/evidence'
import { fields } from '@bayledger/wording/en/fields'
import { severities } from '@bayledger/wording/en/severities'
import { wheels } from '@bayledger/wording/en/wheels'
import { fieldTitle, uncheckedLines } from '@bayledger/wording/fields'
import { SeverityMark } from './severity-mark.tsx'

type NotCheckedProps = {
  unchecked: readonly string[]
  notPossible: Evidence['notPossible']
  /** The order is finished: what was open then is no longer anything to do. */
  isOver: boolean
}

/** What was not checked, and what could not be checked and why; collapsed, and never taken for "no". */
export function NotChecked({ unchecked, notPossible, isOver }: NotCheckedProps) {
  const impossible = notPossible ?? []
  if (unchecked.length === 0 && impossible.length === 0) return null
  const open =
    unchecked.length === 0 ? null : (
      <details className="finding">
        <summary className="finding-summary">
          {isOver
            ? `${factsOf(unchecked.length)} not read; the findings were made without ${unchecked.length === 1 ? 'it' : 'them'}`
            : `${factsOf(unchecked.length)} can still be read`}
        </summary>
        {uncheckedLines({ fields, wheels }, unchecked).map((line) => (
          <p key={line}>{line}</p>
        ))}
      </details>
    )
  return (
    <>
      {open === null || isOver ? (
        open
      ) : (
        <SeverityMark severity="not-checked" word={severities['not-checked']}>
          {open}
        </SeverityMark>
      )}
      {impossible.length === 0 ? null : (
        <SeverityMark severity="not-checked" word={severities['could-not-be-checked']}>
          {impossible.map(({ field, why }) => (
            <p key={`${field} ${why}`}>
              {fieldTitle({ fields, wheels }, field)}: {why}
            </p>
          ))}
        </SeverityMark>
      )}
    </>
  )
}

const factsOf = (count: number): string => (count === 1 ? 'One more fact' : `${count} more facts`)
