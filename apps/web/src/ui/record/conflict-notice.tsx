import { Button } from '../button.tsx'
import type { RowValues } from '../rows/rows.ts'
import { changesBetween, type RecordRow } from './record-rows.ts'

type ConflictNoticeProps = {
  rows: readonly RecordRow[]
  typed: RowValues
  conflict: { readonly version: number; readonly values: RowValues }
  busy: boolean
  onTake: (key: string, value: string) => void
  onTop: () => void
  onGiveUp: () => void
}

/** Two people edited one record: both versions side by side, row by row. What was typed is kept until its writer decides. */
export function ConflictNotice({
  rows,
  typed,
  conflict,
  busy,
  onTake,
  onTop,
  onGiveUp,
}: ConflictNoticeProps) {
  const changes = changesBetween(rows, conflict.values, typed)
  return (
    <section className="record-conflict" aria-label="Both versions">
      {changes.length === 0 ? (
        <p>What you typed is what was saved in the meantime. Nothing is left to save.</p>
      ) : (
        <table className="record-table">
          <thead>
            <tr>
              <th scope="col">Row</th>
              <th scope="col">As you typed it</th>
              <th scope="col">Saved in the meantime</th>
              <td />
            </tr>
          </thead>
          <tbody>
            {changes.map(({ row, before, after }) => (
              <tr key={row.key}>
                <th scope="row">{row.label}</th>
                <td>{after}</td>
                <td>{before}</td>
                <td>
                  <Button
                    aria-label={`Take what was saved: ${row.label}`}
                    onClick={() => onTake(row.key, conflict.values[row.key] ?? '')}
                  >
                    Take what was saved
                  </Button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <div className="row">
        {changes.length === 0 ? null : (
          <Button look="main" busy={busy} onClick={onTop}>
            Save what you typed over it
          </Button>
        )}
        <Button onClick={onGiveUp}>Give up what you typed</Button>
      </div>
    </section>
  )
}
