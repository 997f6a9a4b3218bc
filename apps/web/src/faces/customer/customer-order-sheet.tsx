import type { CustomerOrder } from '@bayledger/contract/customer-face'
import type { CustomerWords } from '@bayledger/wording/customer-words'
import { telephoneWords } from '@bayledger/wording/telephone'
import { type Severity, SeverityMark } from '../../features/findings/severity-mark.tsx'
import { clockTime, day } from '../../lib/format.ts'
import { Section } from '../../ui/section.tsx'
import { isAboutTheSensor } from './about-the-sensor.ts'
import { askedOf } from './estimate-answers.ts'
import { EstimateSheet } from './estimate-sheet.tsx'
import { Measured } from './measured.tsx'
import { useWords } from './spoken.tsx'

type CustomerOrderSheetProps = { order: CustomerOrder; onDecided: () => Promise<void> }

/**
 * In the order of a customer's questions: can I drive it, what is wrong, what does it cost, what do I sign. While there is
 * something to answer, figures, drawing and photos are one touch away, so that price and answers come soon.
 */
export function CustomerOrderSheet({ order, onDecided }: CustomerOrderSheetProps) {
  const { customerPage: says } = useWords()
  const isAsking = order.estimate !== null && askedOf(order.estimate, null).length > 0
  const dangers = order.findings.filter(isDanger)
  const aboutLight = order.findings.filter((finding) => !isDanger(finding))
  return (
    <>
      <header className="customer-head">
        <p className="quiet">
          {order.shopName} · <span className="exact">{order.orderNumber}</span>
        </p>
        <h1>
          {order.vehicleDescription}
          {order.color === null ? '' : `, ${order.color}`}
        </h1>
        {order.ready === null ? null : <p>{order.ready}</p>}
      </header>
      <Section title={says.titles.canDrive}>
        {order.drive.verdict === 'do-not-drive' ? (
          <SeverityMark severity="do-not-drive" word={says.found.words['do-not-drive']}>
            <p className="customer-answer">{order.drive.sentence}</p>
          </SeverityMark>
        ) : (
          <p className="customer-answer">{order.drive.sentence}</p>
        )}
        {order.drive.advice.map((advice) => (
          <p key={advice}>{advice}</p>
        ))}
        {order.drive.how === null ? null : (
          <details className="customer-more" open={!isAsking}>
            <summary>{says.how}</summary>
            <p>{order.drive.how}</p>
          </details>
        )}
      </Section>
      {order.report === null ? null : <SealedReport order={order} report={order.report} />}
      {dangers.length === 0 ? null : (
        <Section title={says.titles.dangerous}>
          <Findings findings={dangers} />
        </Section>
      )}
      <Section title={says.titles.light}>
        {aboutLight.length === 0 ? <p>{says.noCause[whyNoCause(order)]}</p> : null}
        <Findings findings={aboutLight} />
        {order.technicianDiffers ? <p>{says.technicianDiffers}</p> : null}
        {aboutLight.some(({ code }) => isAboutTheSensor(code)) ? (
          <p className="quiet">{says.sensorIs}</p>
        ) : null}
        <Measured order={order} isAsking={isAsking} />
        {order.photos.length === 0 ? null : (
          <details className="customer-more" open={!isAsking}>
            <summary>{says.photos(order.photos.length)}</summary>
            <CustomerPhotos order={order} />
          </details>
        )}
      </Section>
      {order.estimate === null ? null : (
        <EstimateSheet
          key={order.estimate.digest}
          estimate={order.estimate}
          order={order}
          onDecided={onDecided}
        />
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

type SealedReportProps = { order: CustomerOrder; report: NonNullable<CustomerOrder['report']> }

function SealedReport({ order, report }: SealedReportProps) {
  const { customerPage: says, locale } = useWords()
  const clock = { timeZone: order.timeZone, locale }
  return (
    <Section title={says.titles.report}>
      <p>
        {says.report.sealed(
          report.number,
          day(report.sealedAt, report.sealedAt, clock),
          clockTime(report.sealedAt, clock),
        )}
      </p>
      <a className="button button-wide" href="/api/customer/report" download={`report-${report.number}.pdf`}>
        {says.report.open}
      </a>
      <p className="quiet">
        {says.report.check.before}
        <a href="/check">{says.report.check.link}</a>
        {says.report.check.after}
      </p>
    </Section>
  )
}

function CustomerPhotos({ order }: { order: CustomerOrder }) {
  const { photos, locale } = useWords()
  return order.photos.map(({ digest, where, what, takenAt }) => {
    const words = photos.of(where, what, clockTime(takenAt, { timeZone: order.timeZone, locale }))
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
    <SeverityMark key={code} severity={shapes[severity]} word={says.found.words[severity]}>
      <p>{sentence}</p>
      {remedies.map((remedy) => (
        <p key={remedy}>{remedy}</p>
      ))}
    </SeverityMark>
  ))
}

/** How each kind of finding is shown. */
const shapes: Readonly<Record<Finding['severity'], Severity>> = {
  'do-not-drive': 'do-not-drive',
  'do-not-open-the-tire': 'do-not-drive',
  'repair-before-release': 'do-not-drive',
  cause: 'cause',
  unexplained: 'for-information',
}
