import type { OrderState } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { ArrivalTask } from '../../../features/arrival/arrival-tasks.ts'
import { Button } from '../../../ui/button.tsx'

type WheelTask = Extract<ArrivalTask, { wheel: WheelPosition }>['what']

const words: Readonly<Record<WheelTask, string>> = { gauge: 'Gauge', sensor: 'Sensor', tire: 'Tire' }

type WheelTabsProps = {
  state: OrderState
  wheel: WheelPosition
  at: WheelTask
  onOpen: (task: ArrivalTask) => void
}

/** Tabs for the parts of one wheel's arrival check, in any order. */
export function WheelTabs({ state, wheel, at, onOpen }: WheelTabsProps) {
  const parts: readonly WheelTask[] =
    state.sheet?.sheet.system === 'direct' ? ['gauge', 'sensor', 'tire'] : ['gauge', 'tire']
  return (
    <>
      {parts
        .filter((what) => what !== at)
        .map((what) => (
          <Button key={what} onClick={() => onOpen({ what, wheel })}>
            {words[what]}
          </Button>
        ))}
    </>
  )
}
