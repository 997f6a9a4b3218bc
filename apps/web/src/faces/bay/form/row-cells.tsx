import { useEffect, useRef } from 'react'
import { type RowValues, rowWords } from '../../../ui/rows/rows.ts'
import { isAnswered, type Row } from './rows.ts'

type RowCellsProps = {
  rows: readonly Row[]
  values: RowValues
  active: string
  onActive: (key: string) => void
}

/** What a form holds so far; a tap on a cell brings up its pad. */
export function RowCells({ rows, values, active, onActive }: RowCellsProps) {
  const list = useRef<HTMLUListElement>(null)
  // Where a tall pad leaves little room, keep the current cell in view.
  useEffect(() => {
    if (active !== '') list.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest' })
  }, [active])
  return (
    <ul ref={list} className={rows.length > 3 ? 'row-cells row-cells-many' : 'row-cells'}>
      {rows.map((row) => {
        const value = values[row.key]
        const words = rowWords(row, value)
        const answered = isAnswered(row, value)
        return (
          <li key={row.key}>
            <button
              type="button"
              className={`row-cell${answered ? '' : ' row-cell-open'}`}
              aria-current={row.key === active ? 'step' : undefined}
              onClick={() => onActive(row.key)}
            >
              <span className="row-cell-label">
                {row.label}
                <span className="for-screen-readers">: </span>
              </span>
              <span
                className={
                  row.kind === 'text' && (row.exact || row.hex) ? 'row-cell-value exact' : 'row-cell-value'
                }
              >
                {words === null ? (
                  <>
                    <span aria-hidden="true">…</span>
                    <span className="for-screen-readers">not answered yet</span>
                  </>
                ) : (
                  words
                )}
              </span>
            </button>
          </li>
        )
      })}
    </ul>
  )
}
