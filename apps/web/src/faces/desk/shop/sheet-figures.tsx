import { figuresOf, figureWorth, type SpecificationSheet } from '@bayledger/reckoning/sheet'
import { figureWorthWords } from '@bayledger/wording/en/figure-worth'
import { seen } from '@bayledger/wording/en/report/seen'
import { useStaffNames } from '../../../features/people/queries.ts'
import { sheetFigureNames, sheetFigureValue } from '../../../features/sheets/figure-words.ts'
import { Section } from '../../../ui/section.tsx'
import { VerifyHere } from './verify-here.tsx'

/**
 * What each figure of a sheet is worth: its source, who entered it, and who other than that person verified it. Whoever
 * reads this may be that other person.
 */
export function SheetFigures({ sheet }: { sheet: SpecificationSheet }) {
  const nameOf = useStaffNames()
  return (
    <Section title="What these figures are worth">
      <p>
        A label, torque or frequency that is not verified is confirmed by a second person, in the bay, before
        a step uses it. Verified here, a figure serves every vehicle of this kind. The vehicle maker’s figures
        govern.
      </p>
      <table className="record-table">
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col">On the sheet</th>
            <th scope="col">Worth</th>
            <th scope="col">Source</th>
            <th scope="col">Entered by</th>
            <th scope="col">Verified by</th>
          </tr>
        </thead>
        <tbody>
          {figuresOf(sheet).map((figure) => {
            const source = sheet.sources[figure] ?? null
            return (
              <tr key={figure}>
                <th scope="row">{sheetFigureNames[figure]}</th>
                <td>{sheetFigureValue(sheet, figure)}</td>
                <td>{figureWorthWords[figureWorth(sheet, figure)]}</td>
                <td>{source === null ? 'none yet' : `${seen.sources[source.kind]}, ${source.reference}`}</td>
                <td>{source === null ? '' : nameOf(source.enteredBy)}</td>
                <td>
                  {source?.verifiedBy == null ? (
                    <VerifyHere sheet={sheet} figure={figure} />
                  ) : (
                    nameOf(source.verifiedBy)
                  )}
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </Section>
  )
}
