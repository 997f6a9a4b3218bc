import { figureStanding } from '@bayledger/ledger/questions/figure-standing'
import { figuresOf } from '@bayledger/reckoning/sheet'
import { figureStandingWords } from '@bayledger/wording/en/figure-worth'
import { seen } from '@bayledger/wording/en/report/seen'
import { sheetFigureNames, sheetFigureValue } from '../../../features/sheets/figure-words.ts'
import { FoldingSection } from '../../../ui/folding-section.tsx'
import type { OrderPart } from './order-part.ts'
import { settledFigures } from './settled.ts'
import '../../../ui/record/record.css'

/** The figures that the order works with: the version of the sheet that it uses, and what each is worth. */
export function FiguresPart({ order }: OrderPart) {
  const { state } = order
  const sheet = state.sheet?.sheet
  if (!sheet) return null
  return (
    <FoldingSection title="Figures of this kind of vehicle" id="figures" settled={settledFigures(order)}>
      <p className="quiet">
        {sheet.name}, version {sheet.version} of its sheet. The vehicle maker’s figures govern.
      </p>
      <table className="record-table">
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col">On the sheet</th>
            <th scope="col">Worth</th>
            <th scope="col">Source</th>
          </tr>
        </thead>
        <tbody>
          {figuresOf(sheet).map((figure) => {
            const standing = figureStanding(state, figure)
            const source = sheet.sources[figure] ?? null
            return (
              <tr key={figure}>
                <th scope="row">{sheetFigureNames[figure]}</th>
                <td>{sheetFigureValue(sheet, figure)}</td>
                <td>{standing === null ? '' : figureStandingWords(standing)}</td>
                <td>
                  {source === null ? 'none named' : `${seen.sources[source.kind]}, ${source.reference}`}
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </FoldingSection>
  )
}
