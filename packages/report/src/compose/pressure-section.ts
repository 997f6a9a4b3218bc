import { carriedPsi, unroundedTargetPsi } from '@bayledger/ledger/questions/carried-pressure'
import type { OrderState, WheelWork } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { Block, Cell, Row, Section } from '../content.ts'
import { coldMargin } from './cold-margin.ts'
import { type ReportContext, writtenMoment } from './context.ts'
import { figureWords, gap, notChecked, number, pressure, temperature, words } from './figures.ts'
import { wheelsOf } from './wheel-lines.ts'

/** Where the label's figures come from, the target and how it was derived, as left and once cold, by wheel. */
export const pressureSection = (state: OrderState, context: ReportContext): Section => {
  const title = 'Pressures'
  const set = wheelsOf(state).filter((wheel) => state.work[wheel]?.pressure)
  const label = labelSource(state)
  if (set.length === 0)
    return {
      title,
      blocks: [label, { kind: 'paragraph', text: 'No pressure was set on this order.', entry: null }],
    }
  return {
    title,
    blocks: [
      label,
      {
        kind: 'paragraph',
        text: 'The target is the label’s figure carried from the outdoor temperature to the tire’s own (gas law at the shop’s altitude), rounded to a tenth, never below the label nor over the limit. The vehicle maker’s label governs.',
        entry: null,
      },
      {
        kind: 'table',
        caption: 'Set',
        columns: [
          { title: 'Wheel', share: 8.5 },
          { title: 'Label', share: 8.5 },
          { title: 'Outdoors', share: 11 },
          { title: 'Tire', share: 16 },
          { title: 'Computed', share: 11.5 },
          { title: 'Target', share: 11.5 },
          { title: 'As left', share: 10.5 },
          { title: 'Once cold', share: 10.5 },
          { title: 'Gauge and when', share: 19 },
        ],
        rows: set.map((wheel) => pressureRow(state, context, wheel, state.work[wheel]?.pressure)),
      },
      ...coldMargin(state),
      ...gaugeLines(state),
    ],
  }
}

const labelSource = (state: OrderState): Block => {
  const source = state.sheet?.sheet.sources.placard
  const confirmed = state.figures.placard
  const read = source ? `${source.kind.replaceAll('-', ' ')}, ${source.reference}` : 'not recorded'
  const seen = confirmed ? `; confirmed on this vehicle: ${confirmed.reference}` : ''
  const doubt = source && !source.verifiedBy && !confirmed ? '; not verified yet' : ''
  return {
    kind: 'paragraph',
    text: `Source of the label’s figures: ${read}${seen}${doubt}.`,
    entry: confirmed?.written.seq ?? state.sheet?.written.seq ?? null,
  }
}

const pressureRow = (
  state: OrderState,
  context: ReportContext,
  wheel: WheelPosition,
  set: WheelWork['pressure'] | undefined,
): Row => {
  if (!set) return { entry: null, cells: [words(wheel), ...Array<Cell>(8).fill(notChecked)] }
  const { target, surroundings, instrument } = set
  const unrounded = unroundedTargetPsi(set)
  const cold = carriedPsi(set, surroundings.outdoor)
  return {
    entry: set.written.seq,
    cells: [
      words(wheel),
      { kind: 'figure', value: number(target.placardPsi), unit: 'psi' },
      temperature(surroundings.outdoor),
      words(tireAir(state, wheel, set)),
      unrounded === null ? words('as the label') : psiFigure(unrounded, 3),
      target.capped
        ? words(`${number(target.psi, 'psi')} psi, at its limit; set again cold`)
        : psiFigure(target.psi, 1),
      pressure(set.asLeft),
      cold === null ? gap('not known') : psiFigure(cold, 1),
      words(`${instrument.code}, ${writtenMoment(context, set.written)}`),
    ],
  }
}

const psiFigure = (psi: number, decimals: number): Cell => ({
  kind: 'figure',
  value: number(Math.round(psi * 10 ** decimals) / 10 ** decimals, 'psi'),
  unit: 'psi',
})

/** "48 °F measured"; a wheel that no sensor was read at has the temperature that was noted for all tires. */
const tireAir = (
  state: OrderState,
  wheel: WheelPosition,
  set: NonNullable<WheelWork['pressure']>,
): string => {
  const { surroundings, target } = set
  if (!surroundings.tire) return target.quality
  const air = figureWords(temperature(surroundings.tire))
  const isRead = [state.closing, state.arrival].some((check) => {
    const reading = check.wheels[wheel]?.sensor?.reading
    return reading?.answer === 'answered' && reading.temperature !== null
  })
  return isRead || target.quality !== 'measured' ? `${air} ${target.quality}` : `${air} as the other tires`
}

/** Each gauge of the order once, with what it was out by. */
const gaugeLines = (state: OrderState): Block[] => {
  const used = [
    ...Object.values(state.arrival.wheels).flatMap(({ gauge }) => (gauge ? [gauge.instrument] : [])),
    ...Object.values(state.work).flatMap(({ pressure: set }) => (set ? [set.instrument] : [])),
    ...Object.values(state.closing.wheels).flatMap(({ gauge }) => (gauge ? [gauge.instrument] : [])),
  ]
  const byCode = new Map(used.map(({ code, correctionPsi }) => [code, correctionPsi]))
  return [...byCode].map(([code, correction]) => ({
    kind: 'paragraph',
    text: `Gauge ${code}: reads ${signed(correction)} psi against the master gauge; figures here are as read.`,
    entry: null,
  }))
}

const signed = (value: number): string => `${value < 0 ? '−' : '+'}${number(Math.abs(value), 'psi')}`
