import { type Clock, clockTime, day } from '../../lib/format.ts'
import type { KeptVersion } from '../../lib/record-source.ts'
import { Button } from '../button.tsx'
import type { RowValues } from '../rows/rows.ts'
import { Section } from '../section.tsx'
import { changesBetween, type RecordRow } from './record-rows.ts'

type RecordHistoryProps = {
  history: readonly KeptVersion[]
  rows: (values: RowValues) => readonly RecordRow[]
  toValues: (content: KeptVersion['content']) => RowValues
  clock: Clock
  now: string
  busy: boolean
  /** Absent: an earlier version cannot be written again here. */
  onWriteAgain?: (values: RowValues) => void
}

/** Who changed what and when, newest first, and the way back: an earlier version is written again as a new one. */
export function RecordHistory({
  history,
  rows,
  toValues,
  clock,
  now,
  busy,
  onWriteAgain,
}: RecordHistoryProps) {
  return (
    <Section title="Who changed what">
      {history.length === 0 ? <p className="quiet">Nobody has changed this yet.</p> : null}
      <ol className="record-history">
        {history.map((version, index) => {
          const before = history[index + 1]
          const values = toValues(version.content)
          const changes =
            before === undefined ? [] : changesBetween(rows(values), toValues(before.content), values)
          return (
            <li key={version.version}>
              <p>
                <strong>Version {version.version}</strong>, {writtenBy(version)} {day(version.at, now, clock)}
                , {clockTime(version.at, clock)}
              </p>
              {before === undefined ? <p className="quiet">The first version of this history.</p> : null}
              <ul>
                {changes.map((change) => (
                  <li key={change.row.key}>
                    {change.row.label}: {change.before} → {change.after}
                  </li>
                ))}
              </ul>
              {index === 0 || onWriteAgain === undefined ? null : (
                <Button busy={busy} onClick={() => onWriteAgain(values)}>
                  {`Write version ${version.version} again`}
                </Button>
              )}
            </li>
          )
        })}
      </ol>
    </Section>
  )
}

const writtenBy = ({ by }: KeptVersion): string => (by === null ? 'as it was found' : `by ${by}`)
