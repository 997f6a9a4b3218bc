import { figureStanding } from '@bayledger/ledger/questions/figure-standing'
import type { OrderState } from '@bayledger/ledger/state'
import { figureWorth, SheetFigure, type SpecificationSheet } from '@bayledger/reckoning/sheet'
import { figureStandingWords, figureWorthWords } from '@bayledger/wording/en/figure-worth'
import { seen } from '@bayledger/wording/en/report/seen'
import { useState } from 'react'
import { sheetFigureNames, sheetFigureValue } from '../../../features/sheets/figure-words.ts'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { EnterFigure } from './enter-figure.tsx'
import { VerifyFigure } from './verify-figure.tsx'
import './figures-screen.css'

type Doing = { readonly what: 'enter' | 'verify'; readonly figure: SheetFigure }

type FiguresScreenProps = {
  state: OrderState
  /** The figure that a step lacks: its form opens at once. */
  first: SheetFigure | null
  onBack: () => void
}

/**
 * Every figure of the order's sheet with what it is worth. Whoever works enters it from its source, and somebody else
 * verifies it there.
 */
export function FiguresScreen({ state, first, onBack }: FiguresScreenProps) {
  const sheet = state.sheet?.sheet
  const [doing, setDoing] = useState<Doing | null>(
    first && sheet && figureWorth(sheet, first) === 'missing' ? { what: 'enter', figure: first } : null,
  )
  const stop = () => setDoing(null)
  if (sheet === undefined)
    return (
      <StepScreen
        title="No specification sheet is chosen yet"
        how="The desk chooses it."
        beside={<Button onClick={onBack}>Back to the step</Button>}
      />
    )
  if (doing?.what === 'enter')
    return <EnterFigure key={doing.figure} state={state} figure={doing.figure} onBack={stop} onDone={stop} />
  if (doing?.what === 'verify')
    return (
      <VerifyFigure
        orderId={state.orderId}
        sheet={sheet}
        figure={doing.figure}
        title={`${sheetFigureNames[doing.figure]}: ${sheetFigureValue(sheet, doing.figure)}`}
        onBack={stop}
        onDone={stop}
      />
    )
  return (
    <StepScreen
      title="Figures of this kind of vehicle"
      how={`${sheet.name}, version ${sheet.version} of its sheet. The vehicle maker’s figures govern.`}
      beside={<Button onClick={onBack}>Back to the step</Button>}
      takesFocus
    >
      <ul className="sheet-figures">
        {hadBy(sheet).map((figure) => (
          <li key={figure} className="sheet-figure">
            <FigureLine state={state} sheet={sheet} figure={figure} />
            <FigureButtons sheet={sheet} figure={figure} onDo={(what) => setDoing({ what, figure })} />
          </li>
        ))}
      </ul>
    </StepScreen>
  )
}

/** What a vehicle of this kind can have: without sensors it has no frequency, and one that needs no learning no procedure. */
const hadBy = ({ sensor, relearn }: SpecificationSheet): SheetFigure[] =>
  SheetFigure.options.filter(
    (figure) => !(figure === 'frequency' && sensor === null) && !(figure === 'relearn' && relearn === null),
  )

type FigureProps = { sheet: SpecificationSheet; figure: SheetFigure }

function FigureLine({ state, sheet, figure }: FigureProps & { state: OrderState }) {
  const source = sheet.sources[figure] ?? null
  const standing = figureStanding(state, figure)
  return (
    <div>
      <strong>{sheetFigureNames[figure]}</strong> {sheetFigureValue(sheet, figure)}
      <span className="sheet-figure-worth">
        {standing === null ? figureWorthWords.missing : figureStandingWords(standing)}
        {source === null ? '' : `; ${seen.sources[source.kind]}, ${source.reference}`}
      </span>
    </div>
  )
}

function FigureButtons({ sheet, figure, onDo }: FigureProps & { onDo: (what: Doing['what']) => void }) {
  const worth = figureWorth(sheet, figure)
  const source = sheet.sources[figure] ?? null
  const entering = worth === 'missing' ? 'Enter' : 'Enter again'
  const of = sheetFigureNames[figure]
  if (worth === 'verified') return null
  return (
    <div className="sheet-figure-buttons">
      <Button aria-label={`${entering}: ${of}`} onClick={() => onDo('enter')}>
        {entering}
      </Button>
      {source === null || source.kind === 'memory' ? null : (
        <Button aria-label={`Verify: ${of}`} onClick={() => onDo('verify')}>
          Verify
        </Button>
      )}
    </div>
  )
}
