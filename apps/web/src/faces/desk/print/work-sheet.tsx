import { answerTo, isLook, newestBundles } from '@bayledger/ledger/questions/answers'
import { handleWithCare } from '@bayledger/ledger/questions/handle-with-care'
import { namedBundle } from '@bayledger/ledger/questions/named'
import { figuresOf } from '@bayledger/reckoning/sheet'
import { bundleTitle } from '@bayledger/wording/bundles'
import { english } from '@bayledger/wording/en/english'
import { findingSentences } from '@bayledger/wording/en/finding-sentences'
import { moves } from '@bayledger/wording/en/moves'
import { seen } from '@bayledger/wording/en/report/seen'
import { steps as stepWords } from '@bayledger/wording/en/steps'
import { wheels } from '@bayledger/wording/en/wheels'
import { stepDoes } from '@bayledger/wording/steps'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import { sheetFigureNames, sheetFigureValue } from '../../../features/sheets/figure-words.ts'
import { clockTimeOrDay } from '../../../lib/format.ts'
import type { OrderPart } from '../sheet/order-part.ts'
import { useShopClock } from '../shop-clock.ts'

const answers = { authorized: 'Yes', declined: 'No', deferred: 'Not today' } as const

/** The order for the shop: what is complained of, what was found, what was agreed, the figures, and the steps to tick. */
export function WorkSheet({ order }: OrderPart) {
  const clock = useShopClock()
  const { state, vehicle } = order
  const sheet = state.sheet?.sheet
  const promised = state.opened?.promisedAt ?? null
  const findings = state.diagnosis?.diagnosis.findings ?? []
  return (
    <>
      <h1>
        {order.number} · {vehicle.plate ?? 'no plate'}
      </h1>
      <p>
        {vehicle.description}
        {promised === null ? '' : ` · promised ${clockTimeOrDay(promised, new Date().toISOString(), clock)}`}
      </p>
      {handleWithCare(state).map((care) => (
        <p key={care.danger}>
          <strong>{moves['handle-with-care'](null, care)}</strong>
        </p>
      ))}
      {state.complaint === null ? null : (
        <>
          <h2>Complaint</h2>
          <p>{order.personalText(state.complaint.words)}</p>
        </>
      )}
      {findings.length === 0 ? null : (
        <>
          <h2>{state.diagnosis?.confirmed ? 'Found' : 'Found, not confirmed'}</h2>
          {findings.map((finding) => (
            <p key={`${finding.code} ${finding.wheels.join(' ')}`}>
              {sentenceFor({ findingSentences, wheels }, finding)}
            </p>
          ))}
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
                    <td>
                      {isLook(bundle)
                        ? 'at the write-up'
                        : answer === undefined
                          ? 'not answered'
                          : answers[answer]}
                    </td>
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
                <span className="paper-box">{state.closed[step.stepKey] ? <Tick /> : null}</span>{' '}
                {step.wheel === null ? '' : `${step.wheel}: `}
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

/** A step that is closed already needs no other tick. */
function Tick() {
  return (
    <svg viewBox="0 0 16 16" aria-hidden="true">
      <path d="M2 8.5 6.2 13 14 3" />
    </svg>
  )
}
