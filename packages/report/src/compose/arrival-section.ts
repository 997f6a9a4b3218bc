import { sizeComparedAt, tireAgeSeen } from '@bayledger/ledger/questions/sidewall-seen'
import { wearAt } from '@bayledger/ledger/questions/wear-seen'
import type { OrderState, TireRecord } from '@bayledger/ledger/state'
import type { SidewallPrint } from '@bayledger/ledger/subjects/arrival/sidewall'
import { tiresOf } from '@bayledger/reckoning/sheet'
import { isAsNamed } from '@bayledger/reckoning/tire/compare-sizes'
import { axleOf, type WheelPosition } from '@bayledger/reckoning/wheels'
import { wornTireWords } from '@bayledger/wording/worn-tires'
import type { Block, Cell, Row, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { personalText, type ReportContext, writtenMoment } from './context.ts'
import { figureWords, gap, good, notChecked, number, orNotChecked, temperature, words } from './figures.ts'
import { authorName } from './people.ts'
import type { Spoken } from './spoken.ts'
import { wheelsOf } from './wheel-lines.ts'

const says = ({ language }: Spoken) => language.report.arrival
const codes = ({ language }: Spoken) => language.report.seen

/** The complaint in full, the light as observed, temperatures and damage. */
export const arrivalSection = (state: OrderState, context: ReportContext): Section => ({
  title: says(context).title,
  blocks: [
    ...toldBlocks(state, context),
    ...lightBlocks(state, context),
    damageTable(state, context),
    printTable(state, context),
    ...otherTires(state, context),
    ...wornTires(state, context),
  ],
})

const toldBlocks = (state: OrderState, context: ReportContext): Block[] => {
  const complaint = state.complaint
  if (!complaint) return [paragraph(says(context).noComplaint)]
  const entry = complaint.written.seq
  const happened = complaint.events
    .filter((event) => event.happened !== false)
    .map(({ kind, wheel, daysAgo }) =>
      says(context).event({
        event: context.language.fields.events[kind],
        wheel: wheel ? context.language.wheels.names[wheel] : null,
        daysAgo: daysAgo ?? null,
      }),
    )
  const { reportedLight } = complaint
  const light = says(context).lightTold(
    reportedLight === null ? null : context.language.lights.does[reportedLight],
  )
  return [
    paragraph(says(context).told(personalText(context, complaint.words)), entry),
    paragraph(`${light} ${says(context).events(happened)}`, entry),
  ]
}

const lightBlocks = (state: OrderState, context: ReportContext): Block[] => {
  const seen = state.arrival.telltale
  const around = state.surroundings
  const light = seen && {
    by: authorName(context, seen.written.by),
    moment: writtenMoment(context, seen.written),
    lampCheck: seen.lampCheck,
    behavior: seen.behavior && context.language.lights.does[seen.behavior],
  }
  const places = around && placesOf(context, around.surroundings)
  return [
    paragraph(says(context).light(light), seen?.written.seq ?? null),
    paragraph(says(context).around(places), around?.written.seq ?? null),
  ]
}

const placesOf = (
  context: Spoken,
  { outdoor, tires, tire, altitudeFeet }: NonNullable<OrderState['surroundings']>['surroundings'],
) => ({
  outdoor: figureWords(temperature(outdoor)),
  tires: codes(context).tires[tires],
  tire: tire && figureWords(temperature(tire)),
  altitude: number(altitudeFeet),
})

const damageTable = (state: OrderState, context: Spoken): Block =>
  table(
    says(context).damage,
    { wheel: 9, tread: 17, stem: 27, tire: 25, fasteners: 22 },
    wheelsOf(state).map((wheel) => tireRow(state, context, wheel)),
  )

const tireRow = (state: OrderState, context: Spoken, wheel: WheelPosition): Row => {
  const tire = state.arrival.tires[wheel]
  return {
    entry: tire?.written.seq ?? null,
    cells: [
      words(wheel),
      orNotChecked(context, tire?.treadDepth32nds, (depth) => ({
        kind: 'figure',
        value: `${number(depth)}/32`,
        unit: 'in',
      })),
      stemCell(context, tire ?? null),
      orNotChecked(context, tire?.tireDamage, (found) =>
        damageCell(
          context,
          found.map((code) => codes(context).tireDamage[code]),
        ),
      ),
      orNotChecked(context, tire?.fastenerDamage, (found) =>
        damageCell(
          context,
          found.map((code) => codes(context).fastenerDamage[code]),
        ),
      ),
    ],
  }
}

/** What the sidewalls say, beside what the sheet has: nobody takes the one for the other. */
const printTable = (state: OrderState, context: Spoken): Block =>
  table(
    says(context).prints,
    { wheel: 9, size: 25, bySheet: 23, dateCode: 23, age: 20 },
    wheelsOf(state).map((wheel) => printRow(state, context, wheel)),
  )

const printRow = (state: OrderState, context: Spoken, wheel: WheelPosition): Row => {
  const tire = state.arrival.tires[wheel]
  return {
    entry: tire?.written.seq ?? null,
    cells: [
      words(wheel),
      printCell(context, tire?.sizeSeen),
      orNotChecked(context, tiresOf(state.sheet?.sheet)?.[axleOf(wheel)], ({ size }) => words(size)),
      printCell(context, tire?.dateCodeSeen),
      ageCell(context, tire),
    ],
  }
}

const printCell = (context: Spoken, seen: SidewallPrint | undefined): Cell =>
  seen === undefined
    ? notChecked(context)
    : seen.readable
      ? words(seen.text)
      : gap(says(context).unread(context.language.tirePrints.unread[seen.why]))

/** By the date code where one was read, which says whether the decade is known; else as it was entered. */
const ageCell = (context: Spoken, tire: OrderState['arrival']['tires'][WheelPosition]): Cell => {
  const age = tire ? tireAgeSeen(tire) : null
  return age
    ? words(context.language.tirePrints.age(age))
    : orNotChecked(context, tire?.tireAgeYears, (years) => words(says(context).years(years)))
}

/** Tires that are not those of the sheet, each in a sentence. */
const otherTires = (state: OrderState, context: Spoken): Block[] =>
  wheelsOf(state).flatMap((wheel): Block[] => {
    const tire = state.arrival.tires[wheel]
    const differs = sizeComparedAt(state, wheel)
    const bySheet = tiresOf(state.sheet?.sheet)?.[axleOf(wheel)]?.size
    if (!differs || isAsNamed(differs) || !tire?.sizeSeen?.readable || bySheet === undefined) return []
    const text = context.language.tirePrints.otherTire({
      wheel,
      onTire: tire.sizeSeen.text,
      bySheet,
      differs,
    })
    return [paragraph(text, tire.written.seq)]
  })

/** What wear hints at: no finding, and said as none. */
const wornTires = (state: OrderState, context: Spoken): Block[] =>
  wheelsOf(state).flatMap((wheel): Block[] =>
    wornTireWords(context.language.tirePrints, wheel, wearAt(state, wheel)).map((text) =>
      paragraph(text, state.arrival.tires[wheel]?.written.seq ?? null),
    ),
  )

const stemCell = (context: Spoken, tire: TireRecord | null): Cell => {
  const parts = [
    ...(tire?.valve ? [codes(context).valve[tire.valve]] : []),
    ...(tire?.stem ? [codes(context).stem[tire.stem]] : []),
  ]
  if (parts.length === 0) return notChecked(context)
  return tire?.stem === 'sound' ? good(parts.join(', ')) : words(parts.join(', '))
}

const damageCell = (context: Spoken, damage: readonly string[]): Cell =>
  damage.length === 0 ? good(context.language.report.cells.noneSeen) : words(says(context).damages(damage))
