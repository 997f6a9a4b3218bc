import type { OrderState } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { Thing } from '../../../features/arrival/things.ts'
import { Button } from '../../../ui/button.tsx'

type WheelThing = Extract<Thing, { wheel: WheelPosition }>['what']

const words: Readonly<Record<WheelThing, string>> = { gauge: 'Gauge', sensor: 'Sensor', tire: 'Tire' }

type WheelTabsProps = {
  state: OrderState
  wheel: WheelPosition
  at: WheelThing
  onOpen: (thing: Thing) => void
}

/** The parts of one wheel's arrival check, whichever the technician wants first. */
export function WheelTabs({ state, wheel, at, onOpen }: WheelTabsProps) {
  const parts: readonly WheelThing[] =
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
