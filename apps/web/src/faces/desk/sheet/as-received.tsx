import { missingOnArrival, placardPsi } from '@bayledger/ledger/questions/gates'
import { wearAt } from '@bayledger/ledger/questions/wear-seen'
import type { OrderState } from '@bayledger/ledger/state'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { gates } from '@bayledger/wording/en/gates'
import { lights } from '@bayledger/wording/en/lights'
import { observations } from '@bayledger/wording/en/observations'
import { severities } from '@bayledger/wording/en/severities'
import { tirePrints } from '@bayledger/wording/en/tire-prints'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { gateWords } from '@bayledger/wording/gates'
import { wornTireWords } from '@bayledger/wording/worn-tires'
import { SeverityMark } from '../../../features/findings/severity-mark.tsx'
import { PlanDrawing } from '../../../features/plan/plan-drawing.tsx'
import type { PlanWheel } from '../../../features/plan/plan-wheel.ts'
import { FoldingSection } from '../../../ui/folding-section.tsx'
import { Line, Lines } from '../../../ui/section.tsx'
import type { OrderPart } from './order-part.ts'
import { settledArrival } from './settled.ts'
import { ShortfallLines } from './shortfall/lazy-shortfall-lines.tsx'
import './as-received.css'
import { pressureText } from '../../../lib/format.ts'

/** The vehicle as received: the drawing, and what was not checked. */
export function AsReceived({ order }: OrderPart) {
  const { state } = order
  const missing = missingOnArrival(state)
  const begun =
    state.seq > 0 && (Object.keys(state.arrival.wheels).length > 0 || state.arrival.telltale !== null)
  return (
    <FoldingSection title="As received" id="as-received" settled={settledArrival(order)}>
      <div className="received">
        <PlanDrawing wheels={wheelsReceived(state)} />
        <div>
          <Lines>
            <Line name="Light, seen by us">
              {state.arrival.telltale?.behavior
                ? lights.does[state.arrival.telltale.behavior]
                : 'not checked'}
            </Line>
            <Line name="Lamp check at key-on">
              {state.arrival.telltale?.lampCheck === 'lights'
                ? 'the lamp lights'
                : state.arrival.telltale?.lampCheck === 'dark'
                  ? 'the lamp stays dark'
                  : 'not checked'}
            </Line>
            <Line name="The vehicle has stored">{moduleWords(state)}</Line>
            <Line name="Outdoors">
              {state.surroundings
                ? `${state.surroundings.surroundings.outdoor.value} °${state.surroundings.surroundings.outdoor.unit}, tires ${observations[state.surroundings.surroundings.tires]}`
                : 'not checked'}
            </Line>
          </Lines>
          {readingOrder
            .flatMap((wheel) => wornTireWords(tirePrints, wheel, wearAt(state, wheel)))
            .map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          {begun && missing.length > 0 ? (
            <SeverityMark severity="not-checked" word={severities['not-checked']}>
              <ul>
                {missing.map((reason) => (
                  <li key={`${reason.code} ${reason.wheel}`}>{gateWords(gates, reason)}</li>
                ))}
              </ul>
            </SeverityMark>
          ) : null}
        </div>
      </div>
      <ShortfallLines order={order} />
    </FoldingSection>
  )
}

const moduleWords = (state: OrderState): string => {
  const { module } = state.arrival
  if (module === null) return 'not checked'
  if (module.state === 'unreadable') return `could not be checked: ${module.why ?? 'no reason recorded'}`
  if (module.state === 'blank') return 'nothing: it is blank'
  const ids = Object.values(module.ids).map((id) => id.slice(-4))
  const codes = module.codes.map(
    ({ text, class: kind, wheel }) => `${text ?? observations[kind]}${wheel ? ` (${wheel})` : ''}`,
  )
  return `IDs ending ${ids.join(', ') || 'in none'}; ${codes.length === 0 ? 'no codes' : `codes ${codes.join(', ')}`}`
}

const wheelsReceived = (state: OrderState): Partial<Record<WheelPosition, PlanWheel>> =>
  Object.fromEntries(
    readingOrder
      .filter((wheel) => wheel !== 'SP' || state.sheet?.sheet.spare !== 'none')
      .map((wheel) => [wheel, receivedWheel(state, wheel)]),
  )

const receivedWheel = (state: OrderState, wheel: WheelPosition): PlanWheel => {
  const readings = state.arrival.wheels[wheel]
  const gauge = readings?.gauge?.pressure
  const sensor = readings?.sensor?.reading
  const label = placardPsi(state, wheel)
  const isImpossible = (field: string) => readings?.notPossible.some((one) => one.field === field) ?? false
  const notGauged = isImpossible('gauge') ? 'cannot gauge' : 'not gauged'
  const heard =
    sensor === undefined || sensor.answer === 'not-tried'
      ? isAsked(state, wheel)
        ? isImpossible('answer')
          ? 'cannot ask'
          : 'not asked'
        : 'none due'
      : sensor.answer === 'silent'
        ? `silent ×${sensor.tries}`
        : `…${sensor.id?.slice(-4) ?? '????'} ${sensor.pressure ? pressureText(sensor.pressure) : ''}`
  return {
    lines: [
      gauge ? { text: pressureText(gauge), unit: gauge.unit, isFigure: true } : { text: notGauged },
      { text: label === null ? 'label: –' : `label ${label}` },
      { text: heard },
    ],
    state: 'none',
    label: `${wheelNames[wheel]}: ${gauge ? `${pressureText(gauge)} ${gauge.unit} by gauge` : notGauged}, label ${label ?? 'not known'}, sensor: ${heard}`,
  }
}

/** An unmonitored wheel has no sensor; that it gives no reading is not a gap. */
const isAsked = (state: OrderState, wheel: WheelPosition): boolean => {
  const sheet = state.sheet?.sheet
  return sheet === undefined || (sheet.system === 'direct' && (wheel !== 'SP' || sheet.spareMonitored))
}
