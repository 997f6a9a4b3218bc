import { figureWorth, SafetyFigure, type SpecificationSheet } from '@bayledger/reckoning/sheet'
import { figureWorthWords } from '@bayledger/wording/en/figure-worth'
import { seen } from '@bayledger/wording/en/report/seen'
import { useStaffNames } from '../../../features/people/queries.ts'
import { Section } from '../../../ui/section.tsx'

const names: Readonly<Record<SafetyFigure, string>> = {
  placard: 'Door label and tires',
  studTorque: 'Wheel torque and thread',
  frequency: 'Sensors',
}

/** What each figure of a sheet is worth: its source, who entered it, and who other than that person verified it. */
export function SheetFigures({ sheet }: { sheet: SpecificationSheet }) {
  const nameOf = useStaffNames()
  return (
    <Section title="What these figures are worth">
      <p>
        A figure that is not verified is confirmed by a second person, in the bay, before a step uses it. The
        vehicle maker’s figures govern.
      </p>
      <table className="record-table">
        <thead>
          <tr>
            <th scope="col">Figure</th>
            <th scope="col">Worth</th>
            <th scope="col">Source</th>
            <th scope="col">Entered by</th>
            <th scope="col">Verified by</th>
          </tr>
        </thead>
        <tbody>
          {SafetyFigure.options
            .filter((figure) => figure !== 'frequency' || sheet.sensor !== null)
            .map((figure) => {
              const source = sheet.sources[figure]
              return (
                <tr key={figure}>
                  <th scope="row">{names[figure]}</th>
                  <td>{figureWorthWords[figureWorth(sheet, figure)]}</td>
                  <td>
                    {source === null ? 'none yet' : `${seen.sources[source.kind]}, ${source.reference}`}
                  </td>
                  <td>{source === null ? '' : nameOf(source.enteredBy)}</td>
                  <td>{source?.verifiedBy == null ? 'nobody yet' : nameOf(source.verifiedBy)}</td>
                </tr>
              )
            })}
        </tbody>
      </table>
    </Section>
  )
}
