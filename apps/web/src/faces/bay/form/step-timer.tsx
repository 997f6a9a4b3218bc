import { Timer } from '../../../ui/timer.tsx'
import { useDraft } from './draft-store.ts'

type StepTimerProps = {
  /** Under which the moment of the start is kept on this tablet: it goes on while another screen is shown. */
  draftKey: string
  label: string
  /** In seconds; `null`: it only counts. */
  target: number | null
}

/** The watch of one step. It tells whoever waits; it closes nothing. */
export function StepTimer({ draftKey, label, target }: StepTimerProps) {
  const started = useDraft<number | null>(`${draftKey}/watch`, null)
  return (
    <Timer label={label} target={target} startedAt={started.draft} onStart={(at) => started.change(at)} />
  )
}
