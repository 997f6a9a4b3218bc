import type { Torque } from '@bayledger/reckoning/quantity'
import type { TorqueRound } from '@bayledger/reckoning/torque/torque-rounds'
import { type ReactNode, useState } from 'react'
import { type Wrench, whyNotWrench, wrenchWords } from '../../../features/torque/wrench-fit.ts'
import { Button } from '../../../ui/button.tsx'
import { useInstrument } from '../instruments/chosen-instrument.ts'
import { InstrumentList } from '../instruments/instrument-list.tsx'
import { useToday } from '../session/today.ts'

type WrenchInHandProps = {
  figure: Torque
  round: TorqueRound
  children: (wrench: Wrench, change: ReactNode) => ReactNode
}

/** Asks which torque wrench is in the hand; one that is overdue, quarantined or out of range cannot be taken. */
export function WrenchInHand({ figure, round, children }: WrenchInHandProps) {
  const { chosen, all, choose, problem } = useInstrument('wrench')
  const today = useToday()
  const [changing, setChanging] = useState(false)
  if (changing || chosen === null || whyNotWrench(chosen, figure, today, round) !== undefined)
    return (
      <InstrumentList
        title="Which torque wrench is in your hand?"
        all={all}
        detailOf={wrenchWords}
        whyNotOf={(wrench) => whyNotWrench(wrench, figure, today, round)}
        onChoose={(wrench) => {
          choose(wrench)
          setChanging(false)
        }}
        problem={problem}
      />
    )
  return children(chosen, <Button onClick={() => setChanging(true)}>Wrench {chosen.code}</Button>)
}
