import type { VehiclePage } from '@bayledger/contract/vehicle-page'
import { axleOf, readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { telephoneWords } from '@bayledger/wording/telephone'
import { useQuery } from '@tanstack/react-query'
import { useEffect, useEffectEvent } from 'react'
import { Link, useNavigate, useParams } from 'react-router'
import { PlanDrawing } from '../../../features/plan/plan-drawing.tsx'
import type { PlanWheel } from '../../../features/plan/plan-wheel.ts'
import { type Clock, day, money } from '../../../lib/format.ts'
import { customerPath, deskOrderPath, vehiclePath, writeUpPath } from '../../../lib/paths.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Line, Lines, Section } from '../../../ui/section.tsx'
import { Sentence, StatusLine } from '../../../ui/sentence.tsx'
import { MergesPart } from '../records/merges-part.tsx'
import { vehicleKind } from '../records/record-kind.ts'
import { useShopClock } from '../shop-clock.ts'
import { useFocusedTitle } from '../use-focused-title.ts'
import { PressureChart } from './pressure-chart.tsx'
import { vehiclePageQuery } from './vehicle-page-query.ts'
import { coverWords, daysSince, dayWords, lastReadings } from './vehicle-words.ts'
import './vehicle-page.css'

/** All that the shop knows of one vehicle. O opens its open order, N begins a write-up, B one of a comeback. */
export function VehicleRoute() {
  const { vehicleId = '' } = useParams()
  const navigate = useNavigate()
  const page = useQuery(vehiclePageQuery(vehicleId))
  // The address of a merged record leads to the one that it is part of.
  const now = page.data?.vehicle.vehicleId
  useEffect(() => {
    if (now !== undefined && now !== vehicleId) navigate(vehiclePath(now), { replace: true })
  }, [now, vehicleId, navigate])
  if (page.data !== undefined) return <OneVehicle key={vehicleId} page={page.data} />
  return (
    <>
      <title>Vehicle · Bayledger desk</title>
      {page.isError ? (
        <ProblemNotice problem={problemText(page.error)} onRetry={() => void page.refetch()} />
      ) : (
        <StatusLine>Reading what the shop knows of this vehicle.</StatusLine>
      )}
    </>
  )
}

function OneVehicle({ page }: { page: VehiclePage }) {
  // Not in the search box that led here: the page's keys would be typed there.
  const title = useFocusedTitle()
  const clock = useShopClock()
  const { vehicle, customer, asOf } = page
  return (
    <>
      <title>{`${vehicle.plate ?? vehicle.description} · Bayledger desk`}</title>
      <h1 ref={title} tabIndex={-1}>
        {[vehicle.description, vehicle.color, vehicle.plate].filter((part) => part !== null).join(' · ')}
      </h1>
      <Lines>
        <Line name="Customer">
          <Link to={customerPath(customer.customerId)}>{customer.name}</Link>
          {customer.phone ? ` · ${telephoneWords(customer.phone)}` : ''}
        </Line>
        <Line name="VIN">{vehicle.vin ?? 'not known'}</Line>
      </Lines>
      <NextMove page={page} />
      <Offers page={page} clock={clock} />
      <Section title="Pressures" note={lastDay(page, clock)}>
        <div className="vehicle-last">
          <PlanDrawing wheels={wheelsOf(page, clock)} />
          <PressureChart readings={page.readings} warnAt={page.warnAt} asOf={asOf} clock={clock} />
        </div>
        <Lacks page={page} clock={clock} />
      </Section>
      <Section title="Our sensors">
        {page.fitted.length === 0 ? (
          <p>We have fitted none on this vehicle.</p>
        ) : (
          <Lines>
            {page.fitted.map(({ wheel, sensorId, at, number, warranty }) => (
              <Line key={wheel} name={wheelNames[wheel]}>
                {`${daysSince(at, asOf, clock.timeZone)} since our sensor · ${coverWords(warranty)} · ${sensorId} · ${number}`}
              </Line>
            ))}
          </Lines>
        )}
      </Section>
      <Visits page={page} clock={clock} />
      <MergesPart kind={vehicleKind} id={vehicle.vehicleId} />
    </>
  )
}

/** What can be done now, with a key for each. */
function NextMove({ page: { openOrder, customer, vehicle, visits } }: { page: VehiclePage }) {
  const navigate = useNavigate()
  const last = visits.find(({ isOpen, orderId }) => !isOpen && orderId !== null)
  const newOrder = writeUpPath(customer.customerId, vehicle.vehicleId)
  const ways: Readonly<Record<string, string | null>> = {
    o: openOrder && deskOrderPath(openOrder.orderId),
    n: newOrder,
    b: last?.orderId ? writeUpPath(customer.customerId, vehicle.vehicleId, last.orderId) : null,
  }
  const onKey = useEffectEvent((event: KeyboardEvent) => {
    const inField =
      event.target instanceof Element &&
      event.target.closest('input, textarea, select, [contenteditable], dialog')
    const way = ways[event.key.toLowerCase()]
    if (!way || inField || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault()
    navigate(way)
  })
  useEffect(() => {
    document.addEventListener('keydown', onKey)
    return () => document.removeEventListener('keydown', onKey)
  }, [])
  return (
    <div className="stack vehicle-next">
      {openOrder === null ? (
        <Sentence>No order is open for this vehicle.</Sentence>
      ) : (
        <Sentence>{`${openOrder.number}: ${openOrder.moves[0]?.words ?? 'nothing is waited for.'}`}</Sentence>
      )}
      <div className="row">
        {openOrder === null ? null : (
          <KeyButton look="main" letter="O" onClick={() => navigate(deskOrderPath(openOrder.orderId))}>
            Open {openOrder.number}
          </KeyButton>
        )}
        <KeyButton letter="N" look={openOrder === null ? 'main' : 'plain'} onClick={() => navigate(newOrder)}>
          Write up a new complaint
        </KeyButton>
        {last === undefined || ways.b === null || ways.b === undefined ? null : (
          <KeyButton letter="B" look="plain" onClick={() => navigate(ways.b ?? newOrder)}>
            It came back after {last.number}
          </KeyButton>
        )}
      </div>
    </div>
  )
}

type KeyButtonProps = {
  readonly letter: string
  readonly look: 'main' | 'plain'
  readonly onClick: () => void
  readonly children: React.ReactNode
}

function KeyButton({ letter, look, onClick, children }: KeyButtonProps) {
  return (
    <Button look={look} onClick={onClick}>
      {children}{' '}
      <span className="vehicle-key" aria-hidden="true">
        {letter}
      </span>
    </Button>
  )
}

function Offers({ page: { offers, asOf }, clock }: { page: VehiclePage; clock: Clock }) {
  return offers.length === 0 ? null : (
    <Section title="Put off or declined, not done since">
      <Lines>
        {offers.map(({ number, words, answer, deferredUntil, answeredAt, totalCents }) => (
          <Line key={`${number} ${words}`} name={totalCents === null ? 'price not shown' : money(totalCents)}>
            {[
              words,
              `${answer === 'deferred' ? 'put off' : 'declined'} ${day(answeredAt, asOf, clock)}`,
              deferredUntil === null ? null : `until ${dayWords(deferredUntil)}`,
              number,
            ]
              .filter((part) => part !== null)
              .join(' · ')}
          </Line>
        ))}
      </Lines>
      <p className="quiet">At the prices of that day, with tax.</p>
    </Section>
  )
}

/** What colder air took from each tire and what is lost, as the vehicle last came. */
function Lacks({ page: { lacks, asOf }, clock }: { page: VehiclePage; clock: Clock }) {
  if (lacks === null || lacks.wheels.length === 0) return null
  return (
    <>
      <p className="quiet">{`As it came, ${lacks.number}, ${day(lacks.at, asOf, clock)}:`}</p>
      <Lines>
        {lacks.wheels.map(({ wheel, words }) => (
          <Line key={wheel} name={wheelNames[wheel]}>
            {words}
          </Line>
        ))}
      </Lines>
    </>
  )
}

function Visits({ page: { visits, asOf }, clock }: { page: VehiclePage; clock: Clock }) {
  return (
    <Section title="Visits">
      {visits.length === 0 ? <p>This vehicle was never here.</p> : null}
      <Lines>
        {visits.map(({ orderId, number, openedAt, isOpen, ofThisOwner, isComeback, cause, done }) => (
          <Line key={number} name={day(openedAt, asOf, clock)}>
            {orderId === null ? number : <Link to={deskOrderPath(orderId)}>{number}</Link>}
            {[
              isOpen ? 'open' : null,
              ofThisOwner ? null : 'an earlier owner’s',
              isComeback ? 'comeback' : null,
              cause ?? 'no cause on record',
              ...done,
            ]
              .filter((part) => part !== null)
              .map((part) => ` · ${part}`)
              .join('')}
          </Line>
        ))}
      </Lines>
    </Section>
  )
}

const lastDay = ({ readings, asOf }: VehiclePage, clock: Clock) => {
  const last = readings.at(-1)
  return last === undefined ? undefined : `last read ${day(last.at, asOf, clock)}`
}

const wheelsOf = (page: VehiclePage, clock: Clock): Partial<Record<WheelPosition, PlanWheel>> => {
  const last = lastReadings(page.readings)
  return Object.fromEntries(
    readingOrder
      .filter((wheel) => wheel !== 'SP' || last.SP !== undefined)
      .map((wheel): [WheelPosition, PlanWheel] => {
        const reading = last[wheel]
        const label = page.label?.[axleOf(wheel)] ?? null
        return [
          wheel,
          {
            lines:
              reading === undefined
                ? [{ text: 'never read' }]
                : [
                    { text: reading.psi.toFixed(1), unit: 'psi', isFigure: true },
                    { text: label === null ? 'label: –' : `label ${label}` },
                  ],
            state: 'none',
            label: `${wheelNames[wheel]}: ${reading === undefined ? 'never read' : `${reading.psi.toFixed(1)} psi on ${day(reading.at, page.asOf, clock)}`}`,
          },
        ]
      }),
  )
}
