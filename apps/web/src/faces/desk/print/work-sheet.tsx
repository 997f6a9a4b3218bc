import { answerTo, newestBundles } from '@bayledger/ledger/questions/answers'
import { namedBundle } from '@bayledger/ledger/questions/named'
import { figuresOf } from '@bayledger/reckoning/sheet'
import { bundleTitle } from '@bayledger/wording/bundles'
import { english } from '@bayledger/wording/en/english'
import { seen } from '@bayledger/wording/en/report/seen'
import { steps as stepWords } from '@bayledger/wording/en/steps'
import { stepDoes } from '@bayledger/wording/steps'
import { sheetFigureNames, sheetFigureValue } from '../../../features/sheets/figure-words.ts'
import { clockTimeOrDay } from '../../../lib/format.ts'
import type { OrderPart } from '../sheet/order-part.ts'
import { useShopClock } from '../shop-clock.ts'

const answers = { authorized: 'Yes', declined: 'No', deferred: 'Later' } as const

/** The order for the shop: what is complained of, what was found, what was agreed, the figures, and the steps to tick. */
export function WorkSheet({ order }: OrderPart) {
  const clock = useShopClock()
  const { state, vehicle } = order
  const sheet = state.sheet?.sheet
  const promised = state.opened?.promisedAt ?? null
  return (
    <>
      <h1>
        {order.number} · {vehicle.plate ?? 'no plate'}
      </h1>
      <p>
        {vehicle.description}
        {promised === null ? '' : ` · promised ${clockTimeOrDay(promised, new Date().toISOString(), clock)}`}
      </p>
      {state.complaint === null ? null : (
        <>
          <h2>Complaint</h2>
          <p>{order.personalText(state.complaint.words)}</p>
        </>
      )}
      {newestBundles(state).length === 0 ? null : (
        <>
          <h2>Agreed</h2>
          <table>
            <tbody>
              {newestBundles(state).map((bundle) => {
                const answer = answerTo(state, bundle)?.answer
                return (
                  <tr key={bundle.bundleKey}>
                    <td>{bundleTitle(english, namedBundle(bundle))}</td>
                    <td>{answer === undefined ? 'not answered' : answers[answer]}</td>
                  </tr>
                )
              })}
            </tbody>
          </table>
        </>
      )}
      {sheet === undefined ? null : (
        <>
          <h2>Figures</h2>
          <table>
            <tbody>
              {figuresOf(sheet).map((figure) => {
                const source = sheet.sources[figure] ?? null
                return (
                  <tr key={figure}>
                    <th scope="row">{sheetFigureNames[figure]}</th>
                    <td>{sheetFigureValue(sheet, figure)}</td>
                    <td>
                      {source === null
                        ? 'no source named'
                        : `${seen.sources[source.kind]}, ${source.reference}`}
                    </td>
                  </tr>
                )
              })}
            </tbody>
          </table>
          <p>The vehicle maker’s figures govern.</p>
        </>
      )}
      {state.plan === null ? null : (
        <>
          <h2>Steps</h2>
          <ul className="paper-steps">
            {state.plan.plan.steps.map((step) => (
              <li key={step.stepKey}>
                <span className="paper-box" /> {step.wheel === null ? '' : `${step.wheel}: `}
                {stepDoes(stepWords, step)}
                {state.closed[step.stepKey] ? ' (closed)' : ''}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  )
}
