import type { CustomerOrder } from '@bayledger/contract/customer-face'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { telephoneWords } from '@bayledger/wording/telephone'
import { type Severity, SeverityMark } from '../../features/findings/severity-mark.tsx'
import { PlanDrawing } from '../../features/plan/plan-drawing.tsx'
import type { PlanMark, PlanWheel } from '../../features/plan/plan-wheel.ts'
import { clockTime, day } from '../../lib/format.ts'
import { Section } from '../../ui/section.tsx'
import { EstimateSheet } from './estimate-sheet.tsx'

type CustomerOrderSheetProps = { order: CustomerOrder; onDecided: () => Promise<void> }

/** In the order of a customer's questions: can I drive it, what is wrong, what does it cost, what do I sign. */
export function CustomerOrderSheet({ order, onDecided }: CustomerOrderSheetProps) {
  const dangers = order.findings.filter(isDanger)
  const aboutLight = order.findings.filter((finding) => !isDanger(finding))
  return (
    <>
      <header className="customer-head">
        <p className="quiet">
          {order.shopName} · {order.orderNumber}
        </p>
        <h1>
          {order.vehicleDescription}
          {order.color === null ? '' : `, ${order.color}`}
        </h1>
      </header>
      <Section title="Can I drive it?">
        {order.drive.verdict === 'do-not-drive' ? (
          <SeverityMark severity="do-not-drive">
            <p className="customer-answer">{order.drive.sentence}</p>
          </SeverityMark>
        ) : (
          <p className="customer-answer">{order.drive.sentence}</p>
        )}
        {order.drive.advice.map((advice) => (
          <p key={advice}>{advice}</p>
        ))}
      </Section>
      {dangers.length === 0 ? null : (
        <Section title="What is dangerous">
          <Findings findings={dangers} />
        </Section>
      )}
      <Section title="The warning light">
        {aboutLight.length === 0 ? (
          <p>
            {order.drive.verdict === 'not-yet-known'
              ? 'The shop is still looking. This page will say what was found.'
              : order.light === 'off'
                ? 'It was off when we looked, so there is no cause of a light to name.'
                : 'So far we found nothing that explains it.'}
          </p>
        ) : null}
        <Findings findings={aboutLight} />
        {order.technicianDiffers ? (
          <p>
            Our technician sees the cause otherwise and will explain it to you. Call us if we have not yet.
          </p>
        ) : null}
        <Measured order={order} />
      </Section>
      {order.estimate === null ? null : (
        <EstimateSheet estimate={order.estimate} order={order} onDecided={onDecided} />
      )}
      {order.report === null ? null : (
        <Section title="Your report">
          <p>
            Report {order.report.number}, sealed {day(order.report.sealedAt, order.report.sealedAt, order)} at{' '}
            {clockTime(order.report.sealedAt, order)}. Keep it: it says what was wrong, what was done and what
            to do next.
          </p>
          <a
            className="button button-wide"
            href="/api/customer/report"
            download={`report-${order.report.number}.pdf`}
          >
            Open the report (PDF)
          </a>
          <p className="quiet">
            Anyone can check that a report is untouched: <a href="/check">drop the file here</a>.
          </p>
        </Section>
      )}
      <footer className="customer-foot">
        <p>
          A question?{' '}
          {order.shopPhone === null ? (
            `Call ${order.shopName}.`
          ) : (
            <a href={`tel:${order.shopPhone.replace(/[^+\d]/g, '')}`}>
              Call {order.shopName}, {telephoneWords(order.shopPhone)}
            </a>
          )}
        </p>
      </footer>
    </>
  )
}

type Finding = CustomerOrder['findings'][number]

/** A danger is one thing and the light another: neither is the cause of the other. */
const isDanger = ({ severity }: Finding): boolean => severity !== 'cause' && severity !== 'unexplained'

function Findings({ findings }: { findings: readonly Finding[] }) {
  return findings.map(({ code, severity, sentence, remedies }) => (
    <SeverityMark key={code} severity={told[severity].shape} word={told[severity].word}>
      <p>{sentence}</p>
      {remedies.map((remedy) => (
        <p key={remedy}>{remedy}</p>
      ))}
    </SeverityMark>
  ))
}

type Told = CustomerOrder['findings'][number]['severity']

/** How each kind of finding is shown: its word and shape, and its mark at the wheels that it names. */
const told: Readonly<Record<Told, { word: string; shape: Severity; mark: PlanMark }>> = {
  'do-not-drive': {
    word: 'Do not drive',
    shape: 'do-not-drive',
    mark: { shape: 'bar', word: 'Do not drive' },
  },
  'do-not-open-the-tire': {
    word: 'Handled with care here',
    shape: 'do-not-drive',
    mark: { shape: 'bar', word: 'With care' },
  },
  'repair-before-release': {
    word: 'To be repaired before it leaves',
    shape: 'do-not-drive',
    mark: { shape: 'bar', word: 'Repair first' },
  },
  cause: { word: 'The cause', shape: 'cause', mark: { shape: 'thick', word: 'Cause' } },
  unexplained: {
    word: 'What we know so far',
    shape: 'for-information',
    mark: { shape: 'thick', word: 'Asked' },
  },
}

/** A wheel that a stop or the cause names, by its shape and word. */
const markAt = (findings: CustomerOrder['findings'], position: WheelPosition): PlanMark | null => {
  const found = findings.find(({ wheels }) => wheels.includes(position))
  if (found === undefined) return null
  const { mark } = told[found.severity]
  // Beside a pressure, "Cause" alone reads as a bad tire.
  return found.severity === 'cause' && found.code.startsWith('sensor-')
    ? { ...mark, word: 'Its sensor' }
    : mark
}

/** Each tire's pressure as received, against the door label. */
function Measured({ order }: { order: CustomerOrder }) {
  const wheels = Object.fromEntries(
    readingOrder.flatMap((position): [string, PlanWheel][] => {
      const gauge = order.gauges[position]
      if (gauge === undefined) return []
      const mark = markAt(order.findings, position)
      const label = gauge.labelPsi === null ? 'no figure on the label' : `should be ${gauge.labelPsi}`
      return [
        [
          position,
          {
            lines: [{ text: gauge.value.toFixed(1), unit: gauge.unit, isFigure: true }, { text: label }],
            state: 'none',
            ...(mark === null ? {} : { mark }),
            label: `${wheelNames[position]}: ${mark === null ? '' : `${mark.word}, `}${gauge.value.toFixed(1)} ${gauge.unit} measured, ${label}${gauge.labelPsi === null ? '' : ' psi'}`,
          },
        ],
      ]
    }),
  )
  if (Object.keys(wheels).length === 0) return null
  return (
    <figure className="customer-measured">
      <PlanDrawing wheels={wheels} />
      <figcaption className="quiet">
        The air in each tire when your vehicle came in, and what the label in the door asks for, in psi. The
        drawing is seen from above, front at the top: LF is the left front wheel, RR the right rear, SP the
        spare.
      </figcaption>
    </figure>
  )
}
