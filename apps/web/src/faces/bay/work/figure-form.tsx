import {
  placardOf,
  type SafetyFigure,
  type SpecificationSheet,
  sensorOf,
  studsOf,
} from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { Suspense, useState } from 'react'
import { tooLong } from '../../../lib/fault-words.ts'
import { Button } from '../../../ui/button.tsx'
import { Figure } from '../../../ui/figure.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { useSignedIn } from '../session/signed-in.ts'
import { VerifyFigure } from '../sheet/lazy-figures.tsx'
import { TorqueFigure } from '../torque/torque-figure.tsx'
import { stepTitle } from './step-words.ts'
import type { WorkFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

const figures: Partial<Readonly<Record<Step['code'], SafetyFigure>>> = {
  'confirm-placard': 'placard',
  'confirm-stud-torque': 'studTorque',
  'confirm-frequency': 'frequency',
}

/** An unverified safety figure: a second person reads it in the maker's own source and names the page. */
export function FigureForm(props: WorkFormProps) {
  const { state, step } = props
  const person = useSignedIn()
  const figure = figures[step.code] ?? 'studTorque'
  const sheet = state.sheet?.sheet
  if (sheet && sheet.sources[figure]?.enteredBy === person?.staffId)
    return <OwnFigure {...props} sheet={sheet} figure={figure} />
  return (
    <WorkRows
      {...props}
      kind="figure.confirmed"
      rows={() => [
        {
          kind: 'text',
          key: 'reference',
          label: 'Where you read it',
          hint: "The maker's book or the door label, with the page. If it says another figure, stop and tell the desk.",
          fault: (text) => tooLong(text, 200),
        },
      ]}
      recordWord="I read the same figure: confirm"
      {...(sheet ? { figure: () => <SheetFigure sheet={sheet} figure={figure} /> } : {})}
      payload={(values) => ({
        figure,
        reference: (values.reference ?? '').trim(),
        stepKey: step.stepKey,
      })}
    />
  )
}

/** Whoever entered the figure hands the tablet to somebody else, who verifies it on the sheet, for every such vehicle. */
function OwnFigure({
  state,
  step,
  sheet,
  figure,
  onDone,
}: WorkFormProps & { sheet: SpecificationSheet; figure: SafetyFigure }) {
  const [isHanded, setHanded] = useState(false)
  if (!isHanded)
    return (
      <StepScreen
        title={stepTitle(step)}
        how="You entered this figure yourself. Somebody else reads it in the maker's source and confirms it."
        figure={<SheetFigure sheet={sheet} figure={figure} />}
        pad={
          <Button look="wide" onClick={() => setHanded(true)}>
            Second person: confirm it
          </Button>
        }
      />
    )
  return (
    <Suspense fallback={null}>
      <VerifyFigure
        orderId={state.orderId}
        sheet={sheet}
        figure={figure}
        title={stepTitle(step)}
        onBack={() => setHanded(false)}
        onDone={onDone}
      />
    </Suspense>
  )
}

function SheetFigure({ sheet, figure }: { sheet: SpecificationSheet; figure: SafetyFigure }) {
  const studs = studsOf(sheet)
  const label = placardOf(sheet)
  if (figure === 'studTorque')
    return studs ? (
      <TorqueFigure torque={studs.torque} of="wheel" source={sheet.sources.studTorque?.reference ?? ''} />
    ) : null
  if (figure === 'frequency')
    return <Figure value={sensorOf(sheet)?.frequencyMHz ?? null} unit="MHz" size="step" />
  if (!label) return null
  return (
    <>
      <span>
        front <Figure value={label.front.psi} unit="psi" size="large" />
      </span>
      <span>
        rear <Figure value={label.rear.psi} unit="psi" size="large" />
      </span>
      {label.spare ? (
        <span>
          spare <Figure value={label.spare.psi} unit="psi" size="large" />
        </span>
      ) : null}
    </>
  )
}
