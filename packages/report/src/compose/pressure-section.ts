import { carriedPsi, unroundedTargetPsi } from '@bayledger/ledger/questions/carried-pressure'
import type { OrderState, WheelWork } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { Block, Cell, Row, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { coldMargin } from './cold-margin.ts'
import { type ReportContext, writtenMoment } from './context.ts'
import { figureRead } from './figure-read.ts'
import { figureWords, gap, notChecked, number, pressure, temperature, words } from './figures.ts'
import type { Spoken } from './spoken.ts'
import { wheelsOf } from './wheel-lines.ts'

const says = ({ language }: Spoken) => language.report.pressures

/** Where the label's figures come from, the target and how it was derived, as left and once cold, by wheel. */
export const pressureSection = (state: OrderState, context: ReportContext): Section => {
  const { title } = says(context)
  const set = wheelsOf(state).filter((wheel) => state.work[wheel]?.pressure)
  const label = labelSource(state, context)
  if (set.length === 0) return { title, blocks: [label, paragraph(says(context).noneSet)] }
  return {
    title,
    blocks: [
      label,
      paragraph(says(context).howDerived),
      table(
        says(context).set,
        setShares,
        set.map((wheel) => pressureRow(state, context, wheel, state.work[wheel]?.pressure)),
      ),
      ...coldMargin(state, context),
      ...gaugeLines(state, context),
    ],
  }
}

const setShares = {
  wheel: 8.5,
  label: 8.5,
  outdoors: 11,
  tire: 16,
  computed: 11.5,
  target: 11.5,
  asLeft: 10.5,
  onceCold: 10.5,
  gauge: 19,
} as const

const labelSource = (state: OrderState, context: Spoken): Block => {
  const { read, entry } = figureRead(state, context, 'placard')
  return paragraph(says(context).labelFrom(read), entry)
}

const pressureRow = (
  state: OrderState,
  context: ReportContext,
  wheel: WheelPosition,
  set: WheelWork['pressure'] | undefined,
): Row => {
  if (!set) return { entry: null, cells: [words(wheel), ...Array<Cell>(8).fill(notChecked(context))] }
  const { target, surroundings, instrument } = set
  const unrounded = unroundedTargetPsi(set)
  const cold = carriedPsi(set, surroundings.outdoor)
  return {
    entry: set.written.seq,
    cells: [
      words(wheel),
      { kind: 'figure', value: number(target.placardPsi), unit: 'psi' },
      temperature(surroundings.outdoor),
      words(tireAir(state, context, wheel, set)),
      unrounded === null ? words(says(context).asTheLabel) : psiFigure(unrounded, 3),
      target.capped
        ? words(says(context).atItsLimit(`${number(target.psi, 'psi')} psi`))
        : psiFigure(target.psi, 1),
      pressure(set.asLeft),
      cold === null ? gap(says(context).coldNotKnown) : psiFigure(cold, 1),
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
  context: Spoken,
  wheel: WheelPosition,
  set: NonNullable<WheelWork['pressure']>,
): string => {
  const { surroundings, target } = set
  const { quality } = target
  if (!surroundings.tire) return says(context).tireAir({ air: null, quality, asOthers: false })
  const air = figureWords(temperature(surroundings.tire))
  const isRead = [state.closing, state.arrival].some((check) => {
    const reading = check.wheels[wheel]?.sensor?.reading
    return reading?.answer === 'answered' && reading.temperature !== null
  })
  return says(context).tireAir({ air, quality, asOthers: !isRead && quality === 'measured' })
}

/** Each gauge of the order once, with what it was out by. */
const gaugeLines = (state: OrderState, context: Spoken): Block[] => {
  const used = [
    ...Object.values(state.arrival.wheels).flatMap(({ gauge }) => (gauge ? [gauge.instrument] : [])),
    ...Object.values(state.work).flatMap(({ pressure: set }) => (set ? [set.instrument] : [])),
    ...Object.values(state.closing.wheels).flatMap(({ gauge }) => (gauge ? [gauge.instrument] : [])),
  ]
  const byCode = new Map(used.map((instrument) => [instrument.code, instrument]))
  return [...byCode].map(([code, { correctionPsi, offsetPsi }]) =>
    paragraph(
      offsetPsi === undefined
        ? says(context).gauge(code, signed(correctionPsi))
        : says(context).gaugeCorrected(code, signed(offsetPsi)),
    ),
  )
}

const signed = (value: number): string => `${value < 0 ? '−' : '+'}${number(Math.abs(value), 'psi')}`
