import { rotationRefused, sizesToSee } from '@bayledger/ledger/questions/rotating-tires'
import { openTroubles } from '@bayledger/ledger/questions/troubles'
import type { OrderState } from '@bayledger/ledger/state'
import { movedPlaces } from '@bayledger/reckoning/rotation/moves'
import { patternMoves, type RotationPattern } from '@bayledger/reckoning/rotation/rotation-pattern'
import { tiresOf } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { Button } from '../../../ui/button.tsx'
import { useDraft } from '../form/draft-store.ts'
import { type RowDraft, RowForm } from '../form/row-form.tsx'
import { useRecord } from '../record/use-record.ts'
import { RotationLook } from './rotation-look.tsx'
import { RotationRefusal } from './rotation-refusal.tsx'
import { rotationRows, type TiresAsked, tiresSeenOf } from './rotation-rows.ts'
import { cautionWords, howWords, stepTitle, undoWords } from './step-words.ts'
import type { WorkFormProps } from './work-form.ts'

/** Before a wheel moves: where each goes, then what each tire says to that. */
export function RotationStep({ state, step, pattern, onDone }: WorkFormProps & { pattern: RotationPattern }) {
  const { record, busy, problem } = useRecord(state.orderId)
  const key = `${state.orderId}/${step.stepKey}`
  const seen = useDraft(`${key}/${pattern}`, false)
  const filled = useDraft<RowDraft>(`${key}/tires`, { values: {}, active: null })
  const refused = useDraft(`${key}/refused`, false)
  const asked = tiresAsked(state, pattern)
  const tires = tiresSeenOf(filled.draft.values, asked)
  const against = refused.draft && tires ? rotationRefused(state, pattern, tires) : null
  if (!seen.draft)
    return <RotationLook state={state} step={step} pattern={pattern} onSeen={() => seen.change(true)} />
  if (against !== null)
    return (
      <RotationRefusal
        state={state}
        step={step}
        pattern={pattern}
        refused={against}
        isTold={isTold(state, step)}
        onAgain={() => {
          refused.discard()
          filled.discard()
        }}
      />
    )
  return (
    <RowForm
      draftKey={`${key}/tires`}
      recordsItself
      title={stepTitle(step)}
      beside={<Button onClick={() => seen.change(false)}>See where each goes</Button>}
      how={howWords(step)}
      caution={cautionWords(step)}
      rows={(values) => rotationRows(values, asked)}
      recordWord="Done: record"
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        const value = tiresSeenOf(values, asked)
        if (value === null) return false
        if (rotationRefused(state, pattern, value) !== null) {
          refused.change(true)
          return false
        }
        const isTaken = await record('step.closed', { stepKey: step.stepKey, value }, undoWords(step), form)
        if (isTaken) onDone()
        return isTaken
      }}
    />
  )
}

const tiresAsked = (state: OrderState, pattern: RotationPattern): TiresAsked => {
  const tires = tiresOf(state.sheet?.sheet)
  const sizes = [...new Set(tires ? [tires.front.size, tires.rear.size] : [])]
  return {
    moved: movedPlaces(patternMoves(pattern)),
    unread: sizesToSee(state, pattern),
    bySheet: sizes.length > 1 ? `front ${sizes[0]}, rear ${sizes[1]}` : (sizes[0] ?? null),
  }
}

/** The desk has heard of it, and has not decided yet. */
const isTold = (state: OrderState, { stepKey }: Step): boolean => {
  const open = new Set(openTroubles(state).map(({ written }) => written.entryId))
  return state.troubles.some((trouble) => trouble.stepKey === stepKey && open.has(trouble.written.entryId))
}
