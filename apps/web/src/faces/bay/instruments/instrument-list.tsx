import type { Instrument } from '@bayledger/contract/settings'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import './instrument-list.css'

type InstrumentListProps<I extends Instrument> = {
  title: string
  all: readonly I[]
  detailOf: (instrument: I) => string
  whyNotOf: (instrument: I) => string | undefined
  onChoose: (instrument: I) => void
  problem: unknown
}

/** Which instrument is in the hand; one that may not be used today says why and cannot be taken. */
export function InstrumentList<I extends Instrument>({
  title,
  all,
  detailOf,
  whyNotOf,
  onChoose,
  problem,
}: InstrumentListProps<I>) {
  return (
    <StepScreen title={title} how="It is kept on this tablet until another is taken." problem={problem}>
      {all.length === 0 && problem === null ? (
        <p>None of this place is in the register. Ask the owner to enter it.</p>
      ) : null}
      <ul className="instruments">
        {all.map((instrument) => (
          <li key={instrument.instrumentId}>
            <Button className="instrument" whyNot={whyNotOf(instrument)} onClick={() => onChoose(instrument)}>
              <span className="exact">{instrument.code}</span> · {detailOf(instrument)}
            </Button>
          </li>
        ))}
      </ul>
    </StepScreen>
  )
}
