import { whyNot } from '@bayledger/ledger/questions/why-not'
import type { Step } from '@bayledger/reckoning/step'
import { refusals } from '@bayledger/wording/en/refusals'
import { refusalWords } from '@bayledger/wording/refusals'
import { Suspense } from 'react'
import { LightForm } from '../arrival/light-form.tsx'
import { ModuleForm } from '../arrival/module-form.tsx'
import { SensorForm } from '../arrival/sensor-form.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { EnterFigure } from '../sheet/lazy-figures.tsx'
import { TorqueStep } from '../torque/torque-step.tsx'
import { CloseForm } from './close-form.tsx'
import { DriveForm } from './drive-form.tsx'
import { FigureForm } from './figure-form.tsx'
import { FitForm } from './fit-form.tsx'
import { InsideForm } from './inside-form.tsx'
import { LeakForm } from './leak-form.tsx'
import { PartForm } from './part-form.tsx'
import { PressureForm } from './pressure-form.tsx'
import { ProgramForm } from './program-form.tsx'
import { PurgeForm } from './purge-form.tsx'
import { RelearnForm } from './relearn-form.tsx'
import { cautionWords, howWords, stepTitle } from './step-words.ts'
import { WheelOffForm } from './wheel-off-form.tsx'
import { WheelOnForm } from './wheel-on-form.tsx'
import type { WorkFormProps } from './work-form.ts'

/** The form by which a step of the plan is closed, by the kind of entry that closes it. */
export function WorkStep(props: WorkFormProps) {
  const { state, step, onDone } = props
  const { wheel } = step
  const shut = whyNot(state, step)
  if (shut?.code === 'FIGURE_MISSING')
    return (
      <Suspense fallback={null}>
        <EnterFigure state={state} figure={shut.values.figure} onDone={onDone} />
      </Suspense>
    )
  if (shut !== null)
    return (
      <StepScreen title={stepTitle(step)} how={refusalWords(refusals, shut)} caution={cautionWords(step)} />
    )
  if (wheel === null) return <VehicleStep {...props} />
  const wheelProps = { ...props, wheel }
  switch (step.closedBy) {
    case 'part.drawn':
      return <PartForm {...props} />
    case 'sensor.programmed':
      return <ProgramForm {...wheelProps} />
    case 'wheel.removed':
      return <WheelOffForm {...wheelProps} />
    case 'tire.inspected':
      return <InsideForm {...wheelProps} />
    case 'sealant.purged':
      return <PurgeForm {...wheelProps} />
    case 'sensor.fitted':
      return <FitForm {...wheelProps} />
    case 'leak.checked':
      return <LeakForm {...wheelProps} />
    case 'wheel.mounted':
      return <WheelOnForm {...wheelProps} />
    case 'pressure.set':
      return <PressureForm {...wheelProps} />
    case 'studs.torqued':
    case 'torque.checked':
      return <TorqueStep {...wheelProps} />
    case 'wheel.checked':
      return (
        <SensorForm
          state={state}
          wheel={wheel}
          phase="closing"
          stepKey={step.stepKey}
          title={stepTitle(step)}
          beside={null}
          nextWords={null}
          onDone={onDone}
        />
      )
    default:
      return <VehicleStep {...props} />
  }
}

function VehicleStep(props: WorkFormProps) {
  const { state, step, onDone } = props
  const { stepKey } = step
  switch (step.closedBy) {
    case 'figure.confirmed':
      return <FigureForm {...props} />
    case 'part.drawn':
      return <PartForm {...props} />
    case 'relearn.done':
      return <RelearnForm {...props} />
    case 'drive.done':
      return <DriveForm {...props} />
    case 'module.read':
      return (
        <ModuleForm
          state={state}
          phase="closing"
          stepKey={stepKey}
          title={stepTitle(step)}
          how={howWords(step)}
          onDone={onDone}
        />
      )
    case 'telltale.observed':
      return (
        <LightForm state={state} phase="closing" stepKey={stepKey} title={stepTitle(step)} onDone={onDone} />
      )
    case 'step.closed':
      return <CloseForm {...props} />
    default:
      return <UnknownStep step={step} />
  }
}

/** A plan from a newer server: this tablet shows the step and cannot close it. */
function UnknownStep({ step }: { step: Step }) {
  return (
    <StepScreen
      title={stepTitle(step)}
      how="This tablet does not know this kind of step. Load the page again; until then close it on another device."
    />
  )
}
