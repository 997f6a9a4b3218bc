import { Timer } from '../../../ui/timer.tsx'
import { useWatch } from '../clock/use-watch.ts'

type StepTimerProps = {
  /** Under which the watch is kept on this tablet: it goes on while another screen is shown. */
  watchKey: string
  label: string
  /** In seconds; `null`: it only counts. */
  target: number | null
}

/** The watch of one step. It informs whoever waits; it closes nothing. */
export function StepTimer({ watchKey, label, target }: StepTimerProps) {
  const { passed, start } = useWatch(watchKey)
  return <Timer label={label} target={target} passed={passed} onStart={() => start()} />
}
