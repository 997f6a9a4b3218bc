import { dayIn } from '@bayledger/reckoning/ready/zoned-time'
import { TextField } from '../../../ui/text-field.tsx'

type PromiseProps = {
  readonly label?: string
  readonly time: string
  /** `null`: today; `''`: half typed, which is no day yet ("11" typed into October 31). */
  readonly day: string | null
  readonly timeZone: string
  readonly onChange: (change: { time: string; day: string | null }) => void
}

/** A promise on the shop's clock, today unless another day is chosen. */
export function PromiseFields({ label = 'Promised by', time, day, timeZone, onChange }: PromiseProps) {
  const today = dayIn(new Date(), timeZone)
  return (
    <>
      <TextField
        label={label}
        type="time"
        value={time}
        onChange={(changed) => onChange({ time: changed, day })}
      />
      <TextField
        label="On"
        type="date"
        min={today}
        // A year of four digits, not of six.
        max="9999-12-31"
        value={day ?? today}
        onChange={(changed) => onChange({ time, day: changed === today ? null : changed })}
      />
    </>
  )
}
