import { type ReactNode, useState } from 'react'
import { tellScan } from '../../../features/scanning/scan-notice.tsx'
import { scanLocked } from '../../../features/scanning/scan-words.ts'
import type { FilledForm } from '../../../ledger/parcel.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { useScanTaker } from '../../../ui/scanner-keys.ts'
import { useDoor } from '../session/lock-store.ts'
import { useDraft } from './draft-store.ts'
import { RowCells } from './row-cells.tsx'
import { RowPad } from './row-pad.tsx'
import { isAnswered, type Row, rowAfter, rowsOpen, rowToShow } from './rows.ts'
import { noPlaceIn, scanPlace } from './scan-place.ts'
import { type StepHead, StepScreen } from './step-screen.tsx'
import './row-form.css'

export type RowDraft = { readonly values: RowValues; readonly active: string | null }

type RowFormProps = Omit<StepHead, 'figure'> & {
  /** Under which the half-filled form is kept on this tablet. */
  draftKey: string
  /** May depend on what is filled in so far. */
  rows: (values: RowValues) => readonly Row[]
  /** The rows' values before anyone types. */
  blank?: RowValues
  /** What follows from what is filled in: one pasted text fills several rows. */
  derive?: (values: RowValues) => RowValues
  /** The row to open first, even if others are still open. */
  firstRow?: string | undefined
  figure?: (values: RowValues) => ReactNode
  recordWord: string | ((values: RowValues) => string)
  /** It records as soon as the last row that must be answered is; undo takes it back. */
  recordsItself?: boolean
  /**
   * Gives back whether the screen may go on; only then is the form emptied. `form` is what it is filled in with again,
   * should the ledger refuse later what was filled in.
   */
  onRecord: (values: RowValues, form: FilledForm) => Promise<boolean>
  busy: boolean
  problem: unknown
  /** What else keeps it from being recorded, with what to do. */
  whyNot?: (values: RowValues) => string | undefined
  children?: ReactNode
}

/** A step that records several rows: cells above, one pad below for the current cell; it advances by itself. */
export function RowForm({
  draftKey,
  rows: rowsFor,
  blank = {},
  derive = asFilled,
  firstRow,
  figure,
  recordWord,
  recordsItself = false,
  onRecord,
  busy,
  problem,
  whyNot,
  children,
  ...head
}: RowFormProps) {
  const [first, setFirst] = useState(firstRow)
  const { draft, change: keep, discard } = useDraft<RowDraft>(draftKey, { values: {}, active: null })
  const change = (next: RowDraft) => {
    setFirst(undefined)
    keep(next)
  }
  const filled = { ...blank, ...draft.values }
  const values = derive(filled)
  const rows = rowsFor(values)
  const open = rowsOpen(rows, values)
  const active =
    rows.find(({ key }) => key === first) ??
    rows.find(({ key }) => key === draft.active) ??
    rowToShow(rows, values)
  if (active === undefined) throw new Error(`the form ${draftKey} has no rows`)

  const send = async (all: RowValues) => {
    const content: RowDraft = { values: all, active: null }
    if (await onRecord(all, { key: draftKey, content })) discard()
  }
  const put = (value: string | null | undefined, goOn: boolean, row: Row = active) => {
    if (busy) return
    const { [row.key]: _before, ...others } = filled
    const kept: RowValues = value === undefined ? others : { ...others, [row.key]: value }
    const next = derive(kept)
    const rowsNow = rowsFor(next)
    const isDone = goOn && isAnswered(row, value)
    const after = isDone ? rowAfter(rowsNow, next, row.key) : null
    change({ values: kept, active: after?.key ?? row.key })
    const isWhole = isDone && after === null && rowsOpen(rowsNow, next).length === 0
    if (recordsItself && isWhole && whyNot?.(next) === undefined) void send(next)
  }
  const isOpen = useDoor() === 'open'
  const scanned = { rows, values, active: active.key }
  useScanTaker({
    fits: (text) => isOpen && !busy && scanPlace(scanned, text) !== null,
    take: (text) => {
      const place = scanPlace(scanned, text)
      tellScan(null)
      if (place !== null) put(place.value, true, place.row)
    },
    refuse: (text) => tellScan(isOpen ? noPlaceIn(scanned, text) : scanLocked),
  })
  const held = open[0] === undefined ? whyNot?.(values) : `Still to answer: ${open[0].label}.`

  return (
    <StepScreen
      {...head}
      {...(figure === undefined ? {} : { figure: figure(values) })}
      problem={problem}
      howBelow={figure !== undefined && rows.length > 3}
      pad={
        <RowPad
          row={active}
          value={values[active.key]}
          onValue={put}
          next={rowAfter(rows, values, active.key)}
          recordWord={typeof recordWord === 'string' ? recordWord : recordWord(values)}
          whyNot={held}
          busy={busy}
          onRecord={() => send(values)}
        />
      }
    >
      {rows.length > 1 ? (
        <RowCells
          rows={rows}
          values={values}
          active={active.key}
          onActive={(key) => change({ values: draft.values, active: key })}
        />
      ) : null}
      {children}
    </StepScreen>
  )
}

const asFilled = (values: RowValues): RowValues => values
