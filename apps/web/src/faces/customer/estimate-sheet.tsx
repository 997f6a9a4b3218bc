import type { CustomerOrder } from '@bayledger/contract/customer-face'
import { cautionsOwed } from '@bayledger/ledger/questions/cautions-owed'
import { useEffect, useRef, useState } from 'react'
import { clockTimeOrDay, money } from '../../lib/format.ts'
import { Button } from '../../ui/button.tsx'
import { Section } from '../../ui/section.tsx'
import { AgreedLook, BundleQuestion } from './bundle-question.tsx'
import {
  type Again,
  askedOf,
  dangerFirst,
  type Estimate,
  openQuestions,
  stillAsked,
  sumsOf,
  wantedIn,
  withAnswer,
  workAhead,
} from './estimate-answers.ts'
import { nothingFilledIn, useHalfDecision } from './kept-decision.ts'
import { SignSheet } from './sign-sheet.tsx'
import { useWords } from './spoken.tsx'

type EstimateSheetProps = { estimate: Estimate; order: CustomerOrder; onDecided: () => Promise<void> }

/** Each bundle with its price and its question, then the sum of what is wanted, then a signature under exactly that. */
export function EstimateSheet({ estimate, order, onDecided }: EstimateSheetProps) {
  const { customerEstimate: says, locale } = useWords()
  const clock = { timeZone: order.timeZone, locale }
  const { half, keep } = useHalfDecision(estimate.digest)
  const { again } = half
  const asked = askedOf(estimate, again)
  const answers = stillAsked(asked, half.answers)
  const answered = estimate.bundles.filter(({ answer }) => answer !== null)
  const wanted = wantedIn(estimate, answers)
  const { lookCents, totalCents } = sumsOf(estimate, answers)
  const waiting = openQuestions(asked, answers)
  const agreedLook = estimate.bundles.find(({ agreedBefore }) => agreedBefore) ?? null
  const saidAbove = new Set(order.findings.map(({ sentence }) => sentence))
  const answerAgain = (what: Again) => keep({ ...half, answers: {}, again: what })
  const [hasJustDecided, setHasJustDecided] = useState(false)
  const decided = async () => {
    keep(nothingFilledIn)
    setHasJustDecided(true)
    await onDecided()
  }
  return (
    <>
      {answered.length === 0 ? null : (
        <YourAnswer
          order={order}
          estimate={estimate}
          again={again}
          onAgain={answerAgain}
          isNew={hasJustDecided}
          totalCents={asked.length === 0 ? totalCents : null}
        />
      )}
      <Section
        title={says.title}
        note={estimate.revision === 1 ? undefined : says.version(estimate.revision)}
      >
        {estimate.readyAt === null || !asked.some(({ answer }) => answer === null) ? null : (
          <p>{says.ready(clockTimeOrDay(estimate.readyAt, estimate.issuedAt, clock))}</p>
        )}
        {order.drive.verdict === 'do-not-drive' ? (
          <p>
            <strong>{says.stillUnsafe}</strong>
          </p>
        ) : null}
        {dangerFirst(estimate.bundles.filter((offer) => offer !== agreedLook)).map((offer) => (
          <BundleQuestion
            key={offer.bundleKey}
            offer={offer}
            insteadOf={
              estimate.bundles.find(({ bundleKey }) => bundleKey === offer.alternativeTo)?.title ?? null
            }
            isReasonSaid={saidAbove.has(offer.reason)}
            cautions={cautionsOwed(offer, estimate.bundles, wanted)}
            isAsked={asked.includes(offer)}
            mayDrive={order.drive.verdict !== 'do-not-drive'}
            answer={answers[offer.bundleKey] ?? null}
            onAnswer={(answer) =>
              keep({ ...half, answers: withAnswer(estimate, answers, offer.bundleKey, answer) })
            }
          />
        ))}
        {lookCents === 0 && agreedLook === null ? null : (
          <AgreedLook offer={agreedLook} look={estimate.look} cents={lookCents} />
        )}
        {asked.length === 0 || Object.keys(answers).length === 0 ? null : (
          <p className="customer-total">
            <span>{says.total}</span> <strong>{money(totalCents)}</strong>
          </p>
        )}
      </Section>
      {asked.length === 0 ? null : (
        <SignSheet
          estimate={estimate}
          customerName={order.customerName}
          half={{ ...half, answers }}
          onHalf={keep}
          wanted={wanted}
          waiting={waiting}
          onDecided={decided}
        />
      )}
    </>
  )
}

type YourAnswerProps = Pick<EstimateSheetProps, 'estimate' | 'order'> & {
  again: Again
  onAgain: (what: Again) => void
  /** Sent a moment ago: it is brought into view, where the form was. */
  isNew: boolean
  /** `null` while something is asked: what is owed then depends on it, and is said below the questions. */
  totalCents: number | null
}

/** That the answer arrived, what it was and what happens next; what was put off can be answered again, and a Yes taken back. */
function YourAnswer({ estimate, order, again, onAgain, isNew, totalCents }: YourAnswerProps) {
  const { customerEstimate: says, locale } = useWords()
  const answered = estimate.bundles.filter(({ answer }) => answer !== null)
  const place = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (isNew) place.current?.scrollIntoView({ block: 'start' })
  }, [isNew])
  // A time that is computed from the work is on the page already, and truer than the one of the estimate.
  const ready =
    order.ready !== null || estimate.readyAt === null
      ? null
      : clockTimeOrDay(estimate.readyAt, estimate.issuedAt, { timeZone: order.timeZone, locale })
  return (
    <div ref={place}>
      <Section title={says.answered.title}>
        <p role="status">{says.answered.recorded}</p>
        <ul className="bundle-lines">
          {answered.map(({ bundleKey, title, answer }) => (
            <li key={bundleKey}>
              <span>{title}</span> <strong>{answer === null ? '' : says.answers[answer]}</strong>
            </li>
          ))}
        </ul>
        {totalCents === null ? null : (
          <p className="customer-total">
            <span>{says.total}</span> <strong>{money(totalCents)}</strong>
          </p>
        )}
        {order.report === null ? (
          <p>
            {says.answered.next({
              work: workAhead(estimate),
              owes: totalCents !== 0,
              ready,
              mayDrive: order.drive.verdict !== 'do-not-drive',
            })}
          </p>
        ) : null}
        {answered.some(({ answer }) => answer === 'declined') ? <p>{says.answered.afterNo}</p> : null}
        <div className="row">
          {again === null && answered.some(({ answerable }) => answerable) ? (
            <Button onClick={() => onAgain('put-off')}>{says.answered.answerDeferred}</Button>
          ) : null}
          {again === null && answered.some(({ mayTakeBack }) => mayTakeBack) ? (
            <Button onClick={() => onAgain('take-back')}>{says.answered.takeBack}</Button>
          ) : null}
        </div>
        {again === 'take-back' ? (
          <>
            <p>{says.answered.takingBack}</p>
            <Button onClick={() => onAgain(null)}>{says.answered.keep}</Button>
          </>
        ) : null}
      </Section>
    </div>
  )
}
