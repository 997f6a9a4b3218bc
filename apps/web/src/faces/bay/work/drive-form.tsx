import { proofDriveMinutes } from '@bayledger/ledger/questions/proof'
import { isFixed } from '@bayledger/ledger/questions/verdicts'
import { lights } from '@bayledger/wording/en/lights'
import { verdicts } from '@bayledger/wording/en/verdicts'
import { Button } from '../../../ui/button.tsx'
import { numberFrom } from '../../../ui/number-text.ts'
import { useWatch } from '../clock/use-watch.ts'
import { useDraft } from '../form/draft-store.ts'
import type { Row } from '../form/rows.ts'
import { LeaveForm, OutOnTheRoad } from './leave-and-back.tsx'
import { howWords, sourceWords } from './step-words.ts'
import type { WorkFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

const odometer = {
  kind: 'number',
  unit: 'mi',
  low: 0,
  high: 2_000_000,
  limits: { whole: 7, decimals: 1 },
} as const

const lightsAtEnd = (['off', 'solid', 'flash-then-solid'] as const).map((value) => ({
  value,
  label: lights.choice[value].label,
}))
const lamps = [
  { value: 'lights-and-goes-out', label: 'Lights and goes out' },
  { value: 'stays-lit', label: 'Stays lit' },
  { value: 'dark', label: 'Stays dark' },
] as const

const out: Row = { ...odometer, key: 'out', label: 'Odometer out' }

const rowsAfter = (clock: number | null): readonly Row[] => [
  out,
  {
    kind: 'number',
    key: 'minutes',
    label: 'Driven',
    unit: 'min',
    low: 0,
    high: 600,
    limits: { whole: 3, decimals: 0 },
    hint:
      clock === null
        ? 'Only minutes between 30 and 60 mph count.'
        : `${clock} min by the clock. Only minutes between 30 and 60 mph count.`,
  },
  { ...odometer, key: 'in', label: 'Odometer in' },
  { kind: 'choice', key: 'light', label: 'Light at the end', options: lightsAtEnd },
  { kind: 'choice', key: 'lamp', label: 'Key off, key on: the lamp', options: lamps },
]

const back = 'Key off, key on: watch the lamp. Note the odometer and what the light did at the end.'

/** The proof drive: drives add up until the light has stayed off for the minutes that a warning may take. */
export function DriveForm(props: WorkFormProps) {
  const { state, step } = props
  const verdict = isFixed(state)
  const key = `${state.orderId}/${step.stepKey}/${state.drives.at(-1)?.written.entryId ?? 'first'}`
  const clock = useWatch(key)
  const untimed = useDraft(`${key}/untimed`, false)
  const minutes = step.figure?.kind === 'minutes' ? step.figure.minutes : proofDriveMinutes
  const how =
    state.drives.length > 0 && verdict.verdict !== 'proven'
      ? `So far: ${verdicts.because(verdict)}. ${howWords(step)}`
      : howWords(step)
  const { watch } = clock
  if (watch === null && !untimed.draft)
    return (
      <LeaveForm
        {...props}
        clock={clock}
        odometerOut={out}
        how={how}
        onUntimed={() => untimed.change(true)}
      />
    )
  if (watch !== null && watch.stoppedAfter === null)
    return <OutOnTheRoad {...props} clock={clock} minutes={minutes} />
  const byClock = watch?.stoppedAfter == null ? null : Math.floor(watch.stoppedAfter / 60)
  return (
    <WorkRows
      {...props}
      kind="drive.done"
      rows={() => rowsAfter(byClock)}
      blank={byClock === null ? {} : { out: watch?.kept.out ?? '', minutes: String(byClock) }}
      beside={
        byClock === null ? (
          <Button onClick={() => untimed.change(false)}>Use the clock</Button>
        ) : (
          <Button onClick={clock.goOn}>Not back yet</Button>
        )
      }
      recordWord="Record the drive"
      // Whoever left by the clock has read the rest before leaving.
      how={byClock === null ? how : back}
      whyNot={(values) => {
        const [before, after] = [numberFrom(values.out ?? ''), numberFrom(values.in ?? '')]
        return before !== null && after !== null && after < before
          ? 'The odometer reads less after the drive than before. Read both again.'
          : undefined
      }}
      payload={(values) => {
        const [before, driven, after] = [values.out, values.minutes, values.in].map((text) =>
          numberFrom(text ?? ''),
        )
        const light = lightsAtEnd.find(({ value }) => value === values.light)
        const lamp = lamps.find(({ value }) => value === values.lamp)
        if (before == null || driven == null || after == null || !light || !lamp) return null
        return {
          stepKey: step.stepKey,
          minutes: driven,
          odometerOut: { value: before, unit: 'mi' },
          odometerIn: { value: after, unit: 'mi' },
          lightAtEnd: light.value,
          lampCheckAfter: lamp.value,
          timed: clock.stop(),
        }
      }}
      figure={() => (
        <p>
          <strong>{minutes} min</strong> <span className="step-source">{sourceWords(step)}</span>
        </p>
      )}
    />
  )
}
