import type { OrderState } from '@bayledger/ledger/state'
import { Button } from '../../../ui/button.tsx'
import { numberFrom } from '../../../ui/number-text.ts'
import { Timer } from '../../../ui/timer.tsx'
import type { WatchHandle } from '../clock/use-watch.ts'
import { RowForm } from '../form/row-form.tsx'
import type { Row } from '../form/rows.ts'
import { StepScreen } from '../form/step-screen.tsx'
import { useRecord } from '../record/use-record.ts'
import { cautionWords, stepTitle } from './step-words.ts'
import type { WorkFormProps } from './work-form.ts'

type DriveProps = Omit<WorkFormProps, 'onDone'> & { clock: WatchHandle }

type LeaveFormProps = DriveProps & {
  odometerOut: Row
  how: string
  onUntimed: () => void
}

/** Before a drive: the odometer, then *Leave*, which starts the tablet's clock. */
export function LeaveForm({ state, step, clock, odometerOut, how, onUntimed }: LeaveFormProps) {
  const { record, busy, problem } = useRecord(state.orderId)
  return (
    <RowForm
      draftKey={`${state.orderId}/${step.stepKey}/leave`}
      title={stepTitle(step)}
      beside={<Button onClick={onUntimed}>Driven without this tablet</Button>}
      how={how}
      caution={cautionWords(step)}
      rows={() => [odometerOut]}
      recordWord="Leave: start the clock"
      busy={busy}
      problem={problem}
      onRecord={async (values, restore) => {
        const out = numberFrom(values.out ?? '')
        if (out === null) return false
        clock.start()
        const left = { stepKey: step.stepKey, odometerOut: { value: out, unit: 'mi' as const } }
        const taken = await record('drive.left', left, 'leaving', restore)
        if (!taken) clock.discard()
        return taken
      }}
    />
  )
}

type OutProps = DriveProps & {
  minutes: number
  left: NonNullable<OrderState['onTheRoad']>
  /** Another tablet left: its clock is not here, and the minutes are typed. */
  onBackElsewhere: () => void
}

/** While the vehicle is out: the clock of the tablet that left with it, and *Back*, which stops it. */
export function OutOnTheRoad({ state, step, clock, minutes, left, onBackElsewhere }: OutProps) {
  const { record, busy, problem } = useRecord(state.orderId)
  const here = clock.watch !== null
  const notLeft = async () => {
    const taken = await record(
      'entry.struck',
      { entryId: left.written.entryId, reason: 'not-done', words: null, secondPerson: null },
      'not left',
      null,
    )
    if (taken) clock.discard()
  }
  return (
    <StepScreen
      title={stepTitle(step)}
      beside={
        <Button busy={busy} onClick={() => void notLeft()}>
          Not left
        </Button>
      }
      how={
        here
          ? 'The clock goes on while this tablet is locked, shows another vehicle or is reloaded.'
          : 'Another tablet left with this vehicle and has its clock. Press Back there, or here and type the minutes.'
      }
      caution={cautionWords(step)}
      problem={problem}
      figure={
        <Timer
          label="On the road"
          target={minutes * 60}
          passed={clock.passed ?? (() => (Date.now() - Date.parse(left.written.writtenAt)) / 1_000)}
          onStart={() => clock.start()}
        />
      }
      pad={
        <Button look="wide" onClick={here ? clock.stop : onBackElsewhere}>
          {here ? 'Back: stop the clock' : 'Back: type the minutes'}
        </Button>
      }
    />
  )
}
