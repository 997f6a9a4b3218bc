import type { OrderState, WheelWork } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { Block, Cell, Row, Section } from '../content.ts'
import { coldMargin } from './cold-margin.ts'
import { figureWords, notChecked, number, pressure, temperature, words } from './figures.ts'
import { wheelsOf } from './wheel-lines.ts'

/** Target and how it was derived, as left, by wheel. */
export const pressureSection = (state: OrderState): Section => {
  const title = 'Pressures'
  const set = wheelsOf(state).filter((wheel) => state.work[wheel]?.pressure)
  if (set.length === 0)
    return { title, blocks: [{ kind: 'paragraph', text: 'No pressure was set on this order.', entry: null }] }
  return {
    title,
    blocks: [
      {
        kind: 'paragraph',
        text: 'The target is the door label’s figure carried from the outdoor temperature to the tire’s own (gas law at the shop’s altitude), never below the label. The vehicle maker’s label governs.',
        entry: null,
      },
      {
        kind: 'table',
        caption: 'Set',
        columns: [
          { title: 'Wheel', share: 9 },
          { title: 'Label', share: 12 },
          { title: 'Outdoors', share: 11 },
          { title: 'Tire', share: 18 },
          { title: 'Target', share: 13 },
          { title: 'As left', share: 13 },
          { title: 'Gauge', share: 12 },
        ],
        rows: set.map((wheel) => pressureRow(wheel, state.work[wheel]?.pressure)),
      },
      ...coldMargin(state),
      ...gaugeLines(state),
    ],
  }
}

const pressureRow = (wheel: WheelPosition, set: WheelWork['pressure'] | undefined): Row => {
  if (!set) return { entry: null, cells: [words(wheel), ...Array<Cell>(6).fill(notChecked)] }
  const { target, surroundings, instrument } = set
  const tire = surroundings.tire ? figureWords(temperature(surroundings.tire)) : ''
  return {
    entry: set.written.seq,
    cells: [
      words(wheel),
      { kind: 'figure', value: number(target.placardPsi), unit: 'psi' },
      temperature(surroundings.outdoor),
      words(`${tire} ${target.quality}`.trim()),
      target.capped
        ? words(`${number(target.psi, 'psi')} psi, at its limit; set again cold`)
        : { kind: 'figure', value: number(target.psi, 'psi'), unit: 'psi' },
      pressure(set.asLeft),
      words(instrument.code),
    ],
  }
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
