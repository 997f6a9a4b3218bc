import type { CustomerOrder } from '@bayledger/contract/customer-face'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { CustomerWords } from '@bayledger/wording/customer-words'
import { telephoneWords } from '@bayledger/wording/telephone'
import { type Severity, SeverityMark } from '../../features/findings/severity-mark.tsx'
import { PlanDrawing } from '../../features/plan/plan-drawing.tsx'
import type { PlanMark, PlanWheel } from '../../features/plan/plan-wheel.ts'
import { clockTime, day, pressureText } from '../../lib/format.ts'
import { Section } from '../../ui/section.tsx'
import { isAboutTheSensor } from './about-the-sensor.ts'
import { EstimateSheet } from './estimate-sheet.tsx'
import { useWords } from './spoken.tsx'

type CustomerOrderSheetProps = { order: CustomerOrder; onDecided: () => Promise<void> }

/** In the order of a customer's questions: can I drive it, what is wrong, what does it cost, what do I sign. */
export function CustomerOrderSheet({ order, onDecided }: CustomerOrderSheetProps) {
  const { customerPage: says, locale } = useWords()
  const clock = { timeZone: order.timeZone, locale }
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
        {order.ready === null ? null : <p>{order.ready}</p>}
      </header>
      <Section title={says.titles.canDrive}>
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
        <Section title={says.titles.dangerous}>
          <Findings findings={dangers} />
        </Section>
      )}
      <Section title={says.titles.light}>
        {aboutLight.length === 0 ? <p>{says.noCause[whyNoCause(order)]}</p> : null}
        <Findings findings={aboutLight} />
        {order.technicianDiffers ? <p>{says.technicianDiffers}</p> : null}
        <Measured order={order} />
      </Section>
      {order.photos.length === 0 ? null : (
        <Section title={says.titles.photos}>
          <CustomerPhotos order={order} />
        </Section>
      )}
      {order.estimate === null ? null : (
        <EstimateSheet
          key={order.estimate.digest}
          estimate={order.estimate}
          order={order}
          onDecided={onDecided}
        />
      )}
      {order.report === null ? null : (
        <Section title={says.titles.report}>
          <p>
            {says.report.sealed(
              order.report.number,
              day(order.report.sealedAt, order.report.sealedAt, clock),
              clockTime(order.report.sealedAt, clock),
            )}
          </p>
          <a
            className="button button-wide"
            href="/api/customer/report"
            download={`report-${order.report.number}.pdf`}
          >
            {says.report.open}
          </a>
          <p className="quiet">
            {says.report.check.before}
            <a href="/check">{says.report.check.link}</a>
            {says.report.check.after}
          </p>
        </Section>
      )}
      <footer className="customer-foot">
        <p>
          {says.question}{' '}
          {order.shopPhone === null ? (
            says.call(order.shopName, null)
          ) : (
            <a href={`tel:${order.shopPhone.replace(/[^+\d]/g, '')}`}>
              {says.call(order.shopName, telephoneWords(order.shopPhone))}
            </a>
          )}
        </p>
      </footer>
    </>
  )
}

function CustomerPhotos({ order }: { order: CustomerOrder }) {
  const { photos } = useWords()
  return order.photos.map(({ digest, where, what, takenAt }) => {
    const words = photos.of(where, what, clockTime(takenAt, order))
    return (
      <figure key={digest} className="customer-photo">
        <img src={`/api/customer/photos/${digest}`} alt={words} loading="lazy" />
        <figcaption className="quiet" aria-hidden="true">
          {words}
        </figcaption>
      </figure>
    )
  })
}

type Finding = CustomerOrder['findings'][number]

const whyNoCause = ({ drive, light }: CustomerOrder): keyof CustomerWords['customerPage']['noCause'] => {
  if (drive.verdict === 'not-yet-known') return 'still-looking'
  return light === 'off' ? 'was-off' : 'unexplained'
}

/** A danger is one thing and the light another: neither is the cause of the other. */
const isDanger = ({ severity }: Finding): boolean => severity !== 'cause' && severity !== 'unexplained'

function Findings({ findings }: { findings: readonly Finding[] }) {
  const { customerPage: says } = useWords()
  return findings.map(({ code, severity, sentence, remedies }) => (
    <SeverityMark key={code} severity={told[severity].shape} word={says.found.words[severity]}>
      <p>{sentence}</p>
      {remedies.map((remedy) => (
        <p key={remedy}>{remedy}</p>
      ))}
    </SeverityMark>
  ))
}

type Told = CustomerOrder['findings'][number]['severity']

/** How each kind of finding is shown: its shape, and that of its mark at the wheels that it names. */
const told: Readonly<Record<Told, { shape: Severity; mark: PlanMark['shape'] }>> = {
  'do-not-drive': { shape: 'do-not-drive', mark: 'bar' },
  'do-not-open-the-tire': { shape: 'do-not-drive', mark: 'bar' },
  'repair-before-release': { shape: 'do-not-drive', mark: 'bar' },
  cause: { shape: 'cause', mark: 'thick' },
  unexplained: { shape: 'for-information', mark: 'thick' },
}

/** A wheel that a stop or the cause names, by its shape and word. */
const markAt = (
  { found: says }: CustomerWords['customerPage'],
  findings: CustomerOrder['findings'],
  position: WheelPosition,
): PlanMark | null => {
  const found = findings.find(({ wheels }) => wheels.includes(position))
  if (found === undefined) return null
  const { severity, code } = found
  const isSensor = severity === 'cause' && isAboutTheSensor(code)
  return { shape: told[severity].mark, word: isSensor ? says.sensorMark : says.marks[severity] }
}

/** Not at a wheel of which only the sensor is wrong: there a pressure would read as what is wrong. */
const lacksOf = ({ lacks, findings }: CustomerOrder): CustomerOrder['lacks'] =>
  lacks.filter(({ wheel }) =>
    findings.some(({ code, wheels }) => wheels.includes(wheel) && !isAboutTheSensor(code)),
  )

/** Each tire's pressure as received, against the door label, and at its wheel what proves that a sensor does not work. */
function Measured({ order }: { order: CustomerOrder }) {
  const { customerPage: says, wheels: wheelsWording } = useWords()
  const wheels = Object.fromEntries(
    readingOrder.flatMap((position): [string, PlanWheel][] => {
      const gauge = order.gauges[position] ?? null
      const silent = order.silent[position] ?? null
      if (gauge === null && silent === null) return []
      const mark = markAt(says, order.findings, position)
      return [
        [
          position,
          {
            lines: [
              ...(gauge === null
                ? []
                : [
                    { text: pressureText(gauge), unit: gauge.unit, isFigure: true },
                    { text: says.measured.label(gauge.labelPsi) },
                  ]),
              ...(silent === null ? [] : [{ text: says.measured.silent(silent) }]),
            ],
            state: 'none',
            ...(mark === null ? {} : { mark }),
            label: says.measured.wheel({
              name: wheelsWording.names[position],
              mark: mark?.word ?? null,
              pressure: gauge && `${pressureText(gauge)} ${gauge.unit}`,
              labelPsi: gauge?.labelPsi ?? null,
              silent,
            }),
          },
        ],
      ]
    }),
  )
  if (Object.keys(wheels).length === 0) return null
  return (
    <figure className="customer-measured">
      <PlanDrawing wheels={wheels} />
      <figcaption className="quiet">{says.measured.caption}</figcaption>
      {lacksOf(order).map(({ wheel, words }) => (
        <p key={wheel}>
          <strong>{says.measured.at(wheelsWording.names[wheel])}</strong> {words}
        </p>
      ))}
    </figure>
  )
}
