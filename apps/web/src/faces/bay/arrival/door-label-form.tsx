import type { OrderState } from '@bayledger/ledger/state'
import { placardOf } from '@bayledger/reckoning/sheet'
import { Suspense } from 'react'
import { tooLong } from '../../../lib/fault-words.ts'
import { Figure } from '../../../ui/figure.tsx'
import { RowForm } from '../form/row-form.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { useRecord } from '../record/use-record.ts'
import { FigureByAnother } from '../sheet/figure-by-another.tsx'
import { EnterFigure } from '../sheet/lazy-figures.tsx'

/** Compares the sheet's pressures with the door label; someone other than the person who entered them must read it. */
export function DoorLabelForm({ state, onDone }: { state: OrderState; onDone: () => void }) {
  const { record, busy, problem } = useRecord(state.orderId)
  const sheet = state.sheet?.sheet
  if (sheet === undefined) return <StepScreen title="No specification sheet is chosen yet" />
  const label = placardOf(sheet)
  if (label === null)
    return (
      <Suspense fallback={null}>
        <EnterFigure state={state} figure="placard" onDone={onDone} />
      </Suspense>
    )
  const { front, rear, spare } = label
  const shown = (
    <>
      <LabelFigure name="front" psi={front.psi} />
      <LabelFigure name="rear" psi={rear.psi} />
      {spare ? <LabelFigure name="spare" psi={spare.psi} /> : null}
    </>
  )
  return (
    <FigureByAnother
      orderId={state.orderId}
      sheet={sheet}
      figure="placard"
      title="Read the label in the door"
      ownTitle="Second person: read the door label"
      shown={shown}
      onDone={onDone}
    >
      {(head) => (
        <RowForm
          draftKey={`${state.orderId}/door-label`}
          {...head}
          title="Read the label in the door"
          figure={() => shown}
          how="If the label says another figure, stop and tell the desk: the vehicle maker's figure governs."
          rows={() => [
            {
              kind: 'text',
              key: 'reference',
              label: 'Where you read it',
              suggestions: [{ value: 'label in the driver’s door', label: 'Label in the driver’s door' }],
              fault: (text) => tooLong(text, 200),
            },
          ]}
          recordWord="I read the same figures: confirm"
          busy={busy}
          problem={problem}
          onRecord={async (values, form) => {
            const taken = await record(
              'figure.confirmed',
              { figure: 'placard', reference: (values.reference ?? '').trim(), stepKey: null },
              'door label',
              form,
            )
            if (taken) onDone()
            return taken
          }}
        />
      )}
    </FigureByAnother>
  )
}

function LabelFigure({ name, psi }: { name: string; psi: number }) {
  return (
    <span>
      {name} <Figure value={psi} unit="psi" size="large" />
    </span>
  )
}
