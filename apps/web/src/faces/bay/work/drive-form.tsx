import { driveOdometerDoubt } from '@bayledger/ledger/questions/odometer'
import { proofDriveMinutes } from '@bayledger/ledger/questions/proof'
import { isFixed } from '@bayledger/ledger/questions/verdicts'
import { lights } from '@bayledger/wording/en/lights'
import { refusals } from '@bayledger/wording/en/refusals'
import { verdicts } from '@bayledger/wording/en/verdicts'
import { Button } from '../../../ui/button.tsx'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
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

/** Asked only where a reading of the odometer is unlikely. */
const readTwice: Row = {
  kind: 'choice',
  key: 'twice',
  label: 'The odometer, read again',
  options: [{ value: 'same', label: 'It says so' }],
}

const readings = (values: RowValues) => {
  const [before, after] = [numberFrom(values.out ?? ''), numberFrom(values.in ?? '')]
  return before === null || after === null
    ? null
    : {
        odometerOut: { value: before, unit: 'mi' as const },
        odometerIn: { value: after, unit: 'mi' as const },
      }
}

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
  const doubtOf = (values: RowValues, confirmed: boolean) => {
    const read = readings(values)
    return read && driveOdometerDoubt(state, read, confirmed)
  }
  const { watch } = clock
  const left = state.onTheRoad?.stepKey === step.stepKey ? state.onTheRoad : null
  if (left === null && !untimed.draft)
    return (
      <LeaveForm
        {...props}
        clock={clock}
        odometerOut={out}
        how={how}
        onUntimed={() => untimed.change(true)}
      />
    )
  if (left !== null && !untimed.draft && (watch === null || watch.stoppedAfter === null))
    return (
      <OutOnTheRoad
        {...props}
        clock={clock}
        left={left}
        minutes={minutes}
        onBackElsewhere={() => untimed.change(true)}
      />
    )
  const byClock = untimed.draft || watch?.stoppedAfter == null ? null : Math.floor(watch.stoppedAfter / 60)
  return (
    <WorkRows
      {...props}
      kind="drive.done"
      rows={(values) =>
        doubtOf(values, false) === null ? rowsAfter(byClock) : [...rowsAfter(byClock), readTwice]
      }
      // What was typed for a drive that nobody timed, and refused, is not filled in for one by the clock.
      draftOf={byClock === null ? 'untimed' : 'by-the-clock'}
      blank={{
        ...(left === null ? {} : { out: String(left.odometerOut.value) }),
        ...(byClock === null ? {} : { minutes: String(byClock) }),
      }}
      beside={
        byClock === null ? (
          <Button onClick={() => untimed.change(false)}>Use the clock</Button>
        ) : (
          <Button onClick={clock.goOn}>Not back yet</Button>
        )
      }
      recordsItself
      recordWord="Record the drive"
      // Whoever left by the clock has read the rest before leaving.
      how={byClock === null ? how : back}
      whyNot={(values) => {
        const read = readings(values)
        if (read !== null && read.odometerIn.value < read.odometerOut.value)
          return refusals.ODOMETER_BACKWARDS({})
        const doubt = doubtOf(values, values.twice === 'same')
        return doubt === null ? undefined : refusals.ODOMETER_IMPLAUSIBLE(doubt)
      }}
      payload={(values) => {
        const read = readings(values)
        const driven = numberFrom(values.minutes ?? '')
        const light = lightsAtEnd.find(({ value }) => value === values.light)
        const lamp = lamps.find(({ value }) => value === values.lamp)
        if (read === null || driven === null || !light || !lamp) return null
        return {
          stepKey: step.stepKey,
          minutes: driven,
          ...read,
          odometerConfirmed: values.twice === 'same' && doubtOf(values, false) !== null,
          lightAtEnd: light.value,
          lampCheckAfter: lamp.value,
          timed: byClock === null ? null : clock.stop(),
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
