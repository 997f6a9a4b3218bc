import { enterFigure, getSheet } from '@bayledger/contract/sheets'
import { sheetFigureDigest } from '@bayledger/ledger/sheet-agreement'
import type { OrderState } from '@bayledger/ledger/state'
import { isMissing, type SheetFigure, type SpecificationSheet } from '@bayledger/reckoning/sheet'
import { useState } from 'react'
import { draftEntry, newId } from '../../../features/ledger/draft-entry.ts'
import { catchUpOrder } from '../../../features/ledger/order-query.ts'
import { sendEntries } from '../../../features/ledger/write-entries.ts'
import { call } from '../../../lib/api-client.ts'
import { isCallProblem } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { RowForm } from '../form/row-form.tsx'
import { bayQueryClient } from '../query-client.ts'
import { figureIn, figureRows } from './figure-rows.ts'

const titles: Readonly<Record<SheetFigure, string>> = {
  placard: 'Type the label in the door',
  studTorque: 'Enter the wheel torque and thread',
  frequency: 'Enter what the vehicle listens to',
  relearn: 'Enter how the vehicle learns',
  system: 'Enter how it watches its tires',
  lifting: 'Enter where it is lifted',
}

const hows: Readonly<Record<SheetFigure, string>> = {
  placard:
    'Photograph the label, then type what it prints. The most that a sidewall may hold is printed on the tire itself. The vehicle maker’s label governs.',
  studTorque:
    'From the vehicle maker’s own source for this very vehicle, in the unit that it prints. No table, formula or similar vehicle can replace it. A second person confirms it.',
  frequency: 'From the sensor maker’s or the vehicle maker’s source. A second person confirms it.',
  relearn:
    'The vehicle maker’s own procedure for this very vehicle. What it does not print is left out, never guessed. A second person verifies it.',
  system: 'From the vehicle maker’s own source for this very vehicle. A second person verifies it.',
  lifting:
    'From the vehicle maker’s own source for this very vehicle, which governs: at a wrong point it can fall. A second person verifies it.',
}

type EnterFigureProps = { state: OrderState; figure: SheetFigure; onBack?: () => void; onDone: () => void }

/** Puts the newest version of the order's sheet into the order, so that its steps get what was entered. */
export const putInOrder = async (orderId: string, sheet: SpecificationSheet): Promise<void> => {
  await sendEntries({ entries: [draftEntry(orderId, 'sheet.chosen', { sheet })] })
  await catchUpOrder(bayQueryClient, orderId)
}

/** Whether the figure is still as this order's sheet has it, so that nobody overwrites what somebody else just entered. */
const isAsShown = (
  shown: SpecificationSheet | undefined,
  newest: SpecificationSheet,
  figure: SheetFigure,
): boolean =>
  isMissing(newest, figure) ||
  (shown !== undefined &&
    !isMissing(shown, figure) &&
    sheetFigureDigest(shown, figure) === sheetFigureDigest(newest, figure))

/**
 * A figure that the sheet misses, or that nobody has verified yet, as it is read now. It serves every vehicle of this
 * kind from then on.
 */
export function EnterFigure({ state, figure, onBack, onDone }: EnterFigureProps) {
  const [busy, setBusy] = useState(false)
  const [problem, setProblem] = useState<unknown>(null)
  const [sure, setSure] = useState<readonly string[]>([])
  const [keys] = useState(() => new Map<string, string>())
  const sheetId = state.sheet?.sheet.sheetId ?? ''
  const asked = isCallProblem(problem, 'VALUE_DOUBTFUL') ? (problem.body.fields ?? []) : []
  return (
    <RowForm
      draftKey={`${state.orderId}/enter/${figure}`}
      title={titles[figure]}
      {...(onBack === undefined ? {} : { beside: <Button onClick={onBack}>Back</Button>, takesFocus: true })}
      how={hows[figure]}
      rows={(values) => figureRows(figure, values)}
      recordWord="Enter it on the sheet"
      busy={busy}
      problem={problem}
      onRecord={async (values) => {
        setBusy(true)
        setProblem(null)
        try {
          const newest = await newestOf(sheetId)
          if (!isAsShown(state.sheet?.sheet, newest, figure)) await putInOrder(state.orderId, newest)
          else {
            const body = { entered: figureIn(figure, values), sure: [...sure] }
            const of = JSON.stringify([newest.version, body])
            const idempotencyKey = keys.get(of) ?? newId()
            keys.set(of, idempotencyKey)
            const { sheet } = await call(enterFigure, {
              params: { sheetId },
              version: newest.version,
              idempotencyKey,
              body,
            })
            await putInOrder(state.orderId, sheet)
          }
          onDone()
          return true
        } catch (thrown) {
          setProblem(thrown)
          return false
        } finally {
          setBusy(false)
        }
      }}
    >
      {asked.length === 0 ? null : (
        <Button
          onClick={() => {
            setSure(asked.map(({ field }) => field))
            setProblem(null)
          }}
        >
          I read it twice: it is right as typed
        </Button>
      )}
    </RowForm>
  )
}

/** The newest version of a sheet. */
export const newestOf = async (sheetId: string): Promise<SpecificationSheet> => {
  const { versions } = await call(getSheet, { params: { sheetId } })
  const [newest] = versions
  if (newest === undefined) throw new RangeError('a sheet has a version')
  return newest.sheet
}
