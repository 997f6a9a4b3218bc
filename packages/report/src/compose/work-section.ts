import type { Closing, OrderState, WheelWork } from '@bayledger/ledger/state'
import { balancedFor, overLimit } from '@bayledger/reckoning/wheel/balance-left'
import { inReadingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { stepDoes } from '@bayledger/wording/steps'
import type { Block, Row, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { good, lastFour, orNotChecked, torque, words } from './figures.ts'
import type { Spoken } from './spoken.ts'

const says = ({ language }: Spoken) => language.report.work
const seen = ({ language }: Spoken) => language.report.seen

/** Part, lot, kit and torque of each wheel that was worked on, and what was written down by hand. */
export const workSection = (state: OrderState, context: Spoken): Section => {
  const worked = inReadingOrder(Object.keys(state.work) as WheelPosition[])
    .map((wheel) => ({ wheel, work: state.work[wheel] }))
    .filter(({ work }) => work && (work.removed || work.part || work.fitted || work.leak || work.broken))
  const blocks: Block[] = [
    worked.length === 0
      ? paragraph(says(context).nothing)
      : table(
          says(context).parts,
          { wheel: 9, part: 25, id: 11, kit: 14, torque: 13, inside: 14, leak: 14 },
          worked.flatMap(({ wheel, work }) => (work ? [workRow(context, wheel, work)] : [])),
        ),
    ...worked.flatMap(({ wheel, work }): Block[] =>
      work?.broken ? [paragraph(says(context).broken(wheel, work.broken.how), work.broken.written.seq)] : [],
    ),
    ...byHand(state, context),
  ]
  return { title: says(context).title, blocks }
}

/** Values of steps that no column above has: core torque, the read in the open tire, where a leak was, what balancing left, which tires have an arrow. */
const byHand = (state: OrderState, context: Spoken): Block[] => {
  const rows = (state.plan?.plan.steps ?? []).flatMap((step): Row[] => {
    const closing = state.closed[step.stepKey]
    return closing && closing.value !== null
      ? [
          {
            entry: closing.written.seq,
            cells: [
              words(step.wheel ?? says(context).vehicle),
              words(stepDoes(context.language.steps, step)),
              words(recordedWords(state, context, step.wheel, closing.value)),
            ],
          },
        ]
      : []
  })
  return rows.length === 0 ? [] : [table(says(context).byHand, { wheel: 12, step: 44, recorded: 44 }, rows)]
}

const recordedWords = (
  state: OrderState,
  context: Spoken,
  wheel: WheelPosition | null,
  value: NonNullable<Closing['value']>,
): string => {
  if (typeof value === 'string') return value
  if ('arrows' in value) return says(context).tires(value)
  const over = overLimit(value, balancedFor(state.sheet?.sheet, wheel ?? 'SP'))
  return says(context).balance(value, over?.limitGrams ?? null)
}

const workRow = (context: Spoken, wheel: WheelPosition, work: WheelWork): Row => {
  const none = words(says(context).noneFitted)
  const fitted = work.fitted
  return {
    entry: fitted?.written.seq ?? work.removed?.written.seq ?? null,
    cells: [
      words(wheel),
      work.part
        ? words(
            says(context).part({
              number: work.part.partNumber,
              lot: work.part.lot ?? null,
              made: work.part.madeMonth ?? null,
            }),
          )
        : none,
      fitted ? { kind: 'id', text: lastFour(fitted.sensorId) } : none,
      fitted ? words(says(context).kit({ number: fitted.kitPart, lot: fitted.kitLot })) : none,
      fitted ? torque(fitted.torque) : none,
      orNotChecked(context, work.inside?.inside, (inside) =>
        inside === 'sound' ? good(seen(context).inside.sound) : words(seen(context).inside[inside]),
      ),
      orNotChecked(context, work.leak, (leak) =>
        leak.tight
          ? good(says(context).tight)
          : words(says(context).leaks(leak.where && seen(context).leak[leak.where])),
      ),
    ],
  }
}
