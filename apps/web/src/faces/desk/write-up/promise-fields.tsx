import { dayIn } from '@bayledger/reckoning/ready/zoned-time'
import { TextField } from '../../../ui/text-field.tsx'

type PromiseProps = {
  readonly time: string
  /** `null`: today. */
  readonly day: string | null
  readonly timeZone: string
  readonly onChange: (change: { time: string; day: string | null }) => void
}

/** A promise on the shop's clock, today unless another day is chosen. */
export function PromiseFields({ time, day, timeZone, onChange }: PromiseProps) {
  const today = dayIn(new Date(), timeZone)
  return (
    <>
      <TextField
        label="Promised by"
        type="time"
        value={time}
        onChange={(changed) => onChange({ time: changed, day })}
      />
      <TextField
        label="On"
        type="date"
        min={today}
        value={day ?? today}
        onChange={(changed) => onChange({ time, day: changed === '' || changed === today ? null : changed })}
      />
    </>
  )
}
