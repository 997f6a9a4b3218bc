import { maySetAside } from '@bayledger/ledger/questions/passed-steps'
import type { OrderState } from '@bayledger/ledger/state'
import type { ClosingKind, Step } from '@bayledger/reckoning/step'
import type { Pace } from '../../../features/arrival/arrival-tasks.ts'
import { Button } from '../../../ui/button.tsx'
import { photoWords } from '../photos/photo-words.ts'
import { standOf } from '../vehicle/vehicle-side.tsx'
import type { SelectedScreen } from './selected-screen.ts'
import type { Stage } from './stage.ts'

type OrderActionsProps = {
  stage: Stage
  state: OrderState
  step: Step | null
  pace: Pace
  onPace: (pace: Pace) => void
  onOpen: (selected: SelectedScreen) => void
}

const wholeVehicle = [
  { what: 'surroundings', name: 'Outdoors' },
  { what: 'warning-light', name: 'Light' },
  { what: 'control-module', name: 'Stored IDs' },
] as const

/** A wheel must be put on, torqued and checked, whatever else is set aside. */
const neverAside: ReadonlySet<ClosingKind> = new Set(['wheel.mounted', 'studs.torqued', 'torque.checked'])

/** Small buttons below the drawing, available everywhere in this order. */
export function OrderActions({ stage, state, step, pace, onPace, onOpen }: OrderActionsProps) {
  const looks = stage === 'arrival' || stage === 'findings'
  const isDirect = state.sheet?.sheet.system === 'direct'
  return (
    <>
      {wholeVehicle
        .filter(({ what }) => looks && (what !== 'control-module' || isDirect))
        .map(({ what, name }) => (
          <Button key={what} onClick={() => onOpen({ at: 'task', task: { what } })}>
            {name} <small>{standOf(state, what)}</small>
          </Button>
        ))}
      {stage === 'work' ? <Button onClick={() => onOpen({ at: 'plan' })}>Job plan</Button> : null}
      {state.diagnosis && !looks ? (
        <Button onClick={() => onOpen({ at: 'findings' })}>Findings</Button>
      ) : null}
      {stage === 'arrival' ? (
        <Button onClick={() => onPace(pace === 'task-by-task' ? 'wheel-by-wheel' : 'task-by-task')}>
          {pace === 'task-by-task' ? 'Wheel by wheel' : 'Task by task'}
        </Button>
      ) : null}
      {state.sheet ? <Button onClick={() => onOpen({ at: 'figures', figure: null })}>Figures</Button> : null}
      {state.opened?.comebackOf ? <Button onClick={() => onOpen({ at: 'comeback' })}>Comeback</Button> : null}
      <Button onClick={() => onOpen({ at: 'history' })}>History</Button>
      {state.photos.length === 0 ? null : (
        <Button onClick={() => onOpen({ at: 'photos' })}>{photoWords.ofOrder(state.photos.length)}</Button>
      )}
      {step === null || neverAside.has(step.closedBy) || !maySetAside(step) ? null : (
        <Button
          aria-label="Set aside this step"
          onClick={() => onOpen({ at: 'aside', stepKey: step.stepKey })}
        >
          Set aside
        </Button>
      )}
    </>
  )
}
