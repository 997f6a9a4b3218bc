import type { OrderState } from '@bayledger/ledger/state'
import {
  placardOf,
  type SafetyFigure,
  type SpecificationSheet,
  sensorOf,
  studsOf,
} from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import type { ReactNode } from 'react'
import { tooLong } from '../../../lib/fault-words.ts'
import { Figure } from '../../../ui/figure.tsx'
import { FigureByAnother } from '../sheet/figure-by-another.tsx'
import { TorqueFigure } from '../torque/torque-figure.tsx'
import { FigureStandingLine } from './figure-standing.tsx'
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
  const figure = figures[step.code] ?? 'studTorque'
  const sheet = state.sheet?.sheet
  const confirm = (head: { readonly beside?: ReactNode }) => (
    <WorkRows
      {...props}
      {...head}
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
      {...(sheet ? { figure: () => <SheetFigure state={state} sheet={sheet} figure={figure} /> } : {})}
      payload={(values) => ({
        figure,
        reference: (values.reference ?? '').trim(),
        stepKey: step.stepKey,
      })}
    />
  )
  if (sheet === undefined) return confirm({})
  return (
    <FigureByAnother
      orderId={state.orderId}
      sheet={sheet}
      figure={figure}
      title={stepTitle(step)}
      ownTitle={stepTitle(step)}
      shown={<SheetFigure state={state} sheet={sheet} figure={figure} />}
      onDone={props.onDone}
    >
      {confirm}
    </FigureByAnother>
  )
}

type ShownFigure = { state: OrderState; sheet: SpecificationSheet; figure: SafetyFigure }

function SheetFigure({ state, sheet, figure }: ShownFigure) {
  return (
    <>
      <FigureAlone sheet={sheet} figure={figure} />
      <FigureStandingLine state={state} figure={figure} />
    </>
  )
}

function FigureAlone({ sheet, figure }: Omit<ShownFigure, 'state'>) {
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
      {(['front', 'rear', 'spare'] as const).map((at) => {
        const printed = label[at]
        return printed === null ? null : (
          <span key={at}>
            {at} <Figure value={printed.psi} unit="psi" size="large" />
            {printed.typed ? ` printed as ${printed.typed.value} ${printed.typed.unit}` : ''}
          </span>
        )
      })}
    </>
  )
}
