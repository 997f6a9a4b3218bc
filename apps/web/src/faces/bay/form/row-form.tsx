import { type ReactNode, useState } from 'react'
import { keepDraft, useDraft } from './draft-store.ts'
import { RowCells } from './row-cells.tsx'
import { RowPad } from './row-pad.tsx'
import { type Row, type RowValues, rowAfter, rowsOpen } from './rows.ts'
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
  /** The row to open first, even if others are still open. */
  firstRow?: string | undefined
  figure?: (values: RowValues) => ReactNode
  recordWord: string | ((values: RowValues) => string)
  /**
   * Gives back whether the screen may go on; only then is the form emptied. `restore` fills it in again, should the
   * ledger refuse later what was filled in.
   */
  onRecord: (values: RowValues, restore: () => void) => Promise<boolean>
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
  firstRow,
  figure,
  recordWord,
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
  const values = { ...blank, ...draft.values }
  const rows = rowsFor(values)
  const open = rowsOpen(rows, values)
  const active =
    rows.find(({ key }) => key === first) ??
    rows.find(({ key }) => key === draft.active) ??
    rows.find((row) => values[row.key] === undefined) ??
    open[0] ??
    rows.at(-1)
  if (active === undefined) throw new Error(`the form ${draftKey} has no rows`)

  const put = (value: string | null | undefined, goOn: boolean) => {
    // What is typed while this is being recorded was meant for the next pad, or for none: it is not taken half.
    if (busy) return
    const { [active.key]: _before, ...others } = values
    const next: RowValues = value === undefined ? others : { ...others, [active.key]: value }
    const after = goOn ? rowAfter(rowsFor(next), next, active.key) : null
    change({ values: next, active: after?.key ?? active.key })
  }
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
          onRecord={async () => {
            const restore = () => keepDraft<RowDraft>(draftKey, { values, active: null })
            if (await onRecord(values, restore)) discard()
          }}
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
