import { type ReactNode, useState } from 'react'
import { Button } from '../../../ui/button.tsx'
import { useToday } from '../session/today.ts'
import { useInstrument } from './chosen-instrument.ts'
import { type Gauge, gaugeWords, whyNotGauge } from './gauge-words.ts'
import { InstrumentList } from './instrument-list.tsx'

type GaugeInHandProps = {
  /** What is done with the gauge; `change` is the button by which another is taken. */
  children: (gauge: Gauge, change: ReactNode) => ReactNode
}

/** Asks once which gauge is in use, then collapses. */
export function GaugeInHand({ children }: GaugeInHandProps) {
  const { chosen, all, choose, problem } = useInstrument('gauge')
  const today = useToday()
  const [changing, setChanging] = useState(false)
  if (changing || chosen === null || whyNotGauge(chosen, today) !== undefined)
    return (
      <InstrumentList
        title="Which gauge is in your hand?"
        all={all}
        detailOf={gaugeWords}
        whyNotOf={(gauge) => whyNotGauge(gauge, today)}
        onChoose={(gauge) => {
          choose(gauge)
          setChanging(false)
        }}
        problem={problem}
      />
    )
  return children(chosen, <Button onClick={() => setChanging(true)}>Gauge {chosen.code}</Button>)
}
