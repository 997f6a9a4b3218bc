import { Button } from '../../../ui/button.tsx'
import { Timer } from '../../../ui/timer.tsx'
import type { WatchHandle } from '../clock/use-watch.ts'
import { RowForm } from '../form/row-form.tsx'
import type { Row } from '../form/rows.ts'
import { StepScreen } from '../form/step-screen.tsx'
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
  return (
    <RowForm
      draftKey={`${state.orderId}/${step.stepKey}/leave`}
      title={stepTitle(step)}
      beside={<Button onClick={onUntimed}>Driven without this tablet</Button>}
      how={how}
      caution={cautionWords(step)}
      rows={() => [odometerOut]}
      recordWord="Leave: start the clock"
      busy={false}
      problem={null}
      onRecord={async (values) => {
        clock.start({ out: values.out ?? '' })
        return true
      }}
    />
  )
}

/** While the vehicle is out: the clock, and *Back*, which stops it. */
export function OutOnTheRoad({ step, clock, minutes }: DriveProps & { minutes: number }) {
  return (
    <StepScreen
      title={stepTitle(step)}
      beside={<Button onClick={clock.discard}>Not left</Button>}
      how="The clock goes on while this tablet is locked, shows another vehicle or is reloaded."
      caution={cautionWords(step)}
      figure={
        <Timer
          label="On the road"
          target={minutes * 60}
          startedAt={clock.watch?.startedAt ?? null}
          onStart={() => clock.start()}
        />
      }
      pad={
        <Button look="wide" onClick={clock.stop}>
          Back: stop the clock
        </Button>
      }
    />
  )
}
