import type { SafetyFigure, SpecificationSheet } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { Figure } from '../../../ui/figure.tsx'
import { useSignedIn } from '../session/signed-in.ts'
import { SecondPersonStep } from '../torque/second-person-step.tsx'
import { TorqueFigure } from '../torque/torque-figure.tsx'
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
  if (sheet?.sources[figure]?.enteredBy === person?.staffId)
    return (
      <SecondPersonStep
        step={step}
        why="You entered this figure yourself. Somebody else reads it in the maker's source and confirms it."
      />
    )
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
          fault: (text) => (text.length > 200 ? 'Keep it to 200 letters.' : undefined),
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

function SheetFigure({ sheet, figure }: { sheet: SpecificationSheet; figure: SafetyFigure }) {
  if (figure === 'studTorque')
    return <TorqueFigure torque={sheet.studs.torque} of="wheel" source={sheet.sources.studTorque.reference} />
  if (figure === 'frequency')
    return <Figure value={sheet.sensor?.frequencyMHz ?? null} unit="MHz" size="step" />
  const { front, rear, spare } = sheet.placard
  return (
    <>
      <span>
        front <Figure value={front.psi} unit="psi" size="large" />
      </span>
      <span>
        rear <Figure value={rear.psi} unit="psi" size="large" />
      </span>
      {spare ? (
        <span>
          spare <Figure value={spare.psi} unit="psi" size="large" />
        </span>
      ) : null}
    </>
  )
}
