import type { Kind, PayloadOf } from '@bayledger/ledger/registry'
import type { ReactNode } from 'react'
import { Button } from '../../../ui/button.tsx'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { useDraft } from '../form/draft-store.ts'
import { RowForm } from '../form/row-form.tsx'
import type { Row } from '../form/rows.ts'
import { StepScreen } from '../form/step-screen.tsx'
import { useRecord } from '../record/use-record.ts'
import { StepFigureView } from './step-figure.tsx'
import { cautionWords, howWords, stepTitle, undoWords } from './step-words.ts'
import type { WorkFormProps } from './work-form.ts'

type WorkRowsProps<K extends Kind> = WorkFormProps & {
  kind: K
  rows: (values: RowValues) => readonly Row[]
  blank?: RowValues
  recordWord: string
  /** What the form is about, where that may change: for another part, nothing that was filled in counts. */
  draftOf?: string | undefined
  recordsItself?: boolean
  /** `null` while it cannot be made of what is filled in. */
  payload: (values: RowValues) => PayloadOf<K> | null
  whyNot?: (values: RowValues) => string | undefined
  beside?: ReactNode
  figure?: (values: RowValues) => ReactNode
  how?: ReactNode
}

/** Longer instructions fill the screen before the form comes up. */
const longWords = 260

/** A step of the plan that is closed by filling in a few things. */
export function WorkRows<K extends Kind>({
  state,
  step,
  onDone,
  kind,
  rows,
  blank,
  recordWord,
  draftOf,
  recordsItself = false,
  payload,
  whyNot,
  beside,
  figure,
  how,
}: WorkRowsProps<K>) {
  const { record, busy, problem } = useRecord(state.orderId)
  const read = useDraft(`${state.orderId}/${step.stepKey}/read`, false)
  const ownFigure = step.figure === null ? undefined : () => <StepFigureView state={state} step={step} />
  const shownFigure = figure ?? ownFigure
  const words = how ?? howWords(step)
  if (typeof words === 'string' && words.length > longWords && !read.draft)
    return (
      <StepScreen
        title={stepTitle(step)}
        how={words}
        caution={cautionWords(step)}
        {...(ownFigure === undefined ? {} : { figure: ownFigure() })}
        pad={
          <Button look="wide" onClick={() => read.change(true)}>
            I have read it: go on
          </Button>
        }
      />
    )
  return (
    <RowForm
      draftKey={[state.orderId, step.stepKey, draftOf ?? ''].join('/')}
      recordsItself={recordsItself}
      title={stepTitle(step)}
      {...(beside === undefined ? {} : { beside })}
      {...(shownFigure === undefined ? {} : { figure: shownFigure })}
      how={words}
      caution={cautionWords(step)}
      rows={rows}
      {...(blank === undefined ? {} : { blank })}
      recordWord={recordWord}
      {...(whyNot === undefined ? {} : { whyNot })}
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        const entry = payload(values)
        if (entry === null) return false
        const taken = await record(kind, entry, undoWords(step), form)
        if (taken) onDone()
        return taken
      }}
    />
  )
}
