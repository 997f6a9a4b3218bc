import { sizeComparedAt, tireAgeSeen } from '@bayledger/ledger/questions/sidewall-seen'
import type { OrderState, TireRecord } from '@bayledger/ledger/state'
import type { SidewallPrint } from '@bayledger/ledger/subjects/arrival/sidewall'
import { tiresOf } from '@bayledger/reckoning/sheet'
import { isAsNamed } from '@bayledger/reckoning/tire/compare-sizes'
import { axleOf, type WheelPosition } from '@bayledger/reckoning/wheels'
import { english } from '@bayledger/wording/en/english'
import { wheelNames } from '@bayledger/wording/en/wheels'
import type { Block, Cell, Row, Section } from '../content.ts'
import { paragraph, table } from './blocks.ts'
import { personalText, type ReportContext, writtenMoment } from './context.ts'
import { figureWords, gap, good, notChecked, number, orNotChecked, temperature, words } from './figures.ts'
import { authorName } from './people.ts'
import { wheelsOf } from './wheel-lines.ts'

const { arrival: says, seen: codes } = english.report

/** The complaint in full, the light as observed, temperatures and damage. */
export const arrivalSection = (state: OrderState, context: ReportContext): Section => ({
  title: says.title,
  blocks: [
    ...toldBlocks(state, context),
    ...lightBlocks(state, context),
    damageTable(state),
    printTable(state),
    ...otherTires(state),
  ],
})

const toldBlocks = (state: OrderState, context: ReportContext): Block[] => {
  const complaint = state.complaint
  if (!complaint) return [paragraph(says.noComplaint)]
  const entry = complaint.written.seq
  const happened = complaint.events
    .filter((event) => event.happened !== false)
    .map(({ kind, wheel, daysAgo }) =>
      says.event({
        event: english.fields.events[kind],
        wheel: wheel ? wheelNames[wheel] : null,
        daysAgo: daysAgo ?? null,
      }),
    )
  const { reportedLight } = complaint
  const light = says.lightTold(reportedLight === null ? null : english.lights.does[reportedLight])
  return [
    paragraph(says.told(personalText(context, complaint.words)), entry),
    paragraph(`${light} ${says.events(happened)}`, entry),
  ]
}

const lightBlocks = (state: OrderState, context: ReportContext): Block[] => {
  const seen = state.arrival.telltale
  const around = state.surroundings
  const light = seen && {
    by: authorName(context, seen.written.by),
    moment: writtenMoment(context, seen.written),
    lampCheck: seen.lampCheck,
    behavior: seen.behavior && english.lights.does[seen.behavior],
  }
  const places = around && placesOf(around.surroundings)
  return [
    paragraph(says.light(light), seen?.written.seq ?? null),
    paragraph(says.around(places), around?.written.seq ?? null),
  ]
}

const placesOf = ({
  outdoor,
  tires,
  tire,
  altitudeFeet,
}: NonNullable<OrderState['surroundings']>['surroundings']) => ({
  outdoor: figureWords(temperature(outdoor)),
  tires: codes.tires[tires],
  tire: tire && figureWords(temperature(tire)),
  altitude: number(altitudeFeet),
})

const damageTable = (state: OrderState): Block =>
  table(
    says.damage,
    { wheel: 9, tread: 17, stem: 27, tire: 25, fasteners: 22 },
    wheelsOf(state).map((wheel) => tireRow(state, wheel)),
  )

const tireRow = (state: OrderState, wheel: WheelPosition): Row => {
  const tire = state.arrival.tires[wheel]
  return {
    entry: tire?.written.seq ?? null,
    cells: [
      words(wheel),
      orNotChecked(tire?.treadDepth32nds, (depth) => ({
        kind: 'figure',
        value: `${number(depth)}/32`,
        unit: 'in',
      })),
      stemCell(tire ?? null),
      orNotChecked(tire?.tireDamage, (found) => damageCell(found.map((code) => codes.tireDamage[code]))),
      orNotChecked(tire?.fastenerDamage, (found) =>
        damageCell(found.map((code) => codes.fastenerDamage[code])),
      ),
    ],
  }
}

/** What the sidewalls say, beside what the sheet has: nobody takes the one for the other. */
const printTable = (state: OrderState): Block =>
  table(
    says.prints,
    { wheel: 9, size: 25, bySheet: 23, dateCode: 23, age: 20 },
    wheelsOf(state).map((wheel) => printRow(state, wheel)),
  )

const printRow = (state: OrderState, wheel: WheelPosition): Row => {
  const tire = state.arrival.tires[wheel]
  return {
    entry: tire?.written.seq ?? null,
    cells: [
      words(wheel),
      printCell(tire?.sizeSeen),
      orNotChecked(tiresOf(state.sheet?.sheet)?.[axleOf(wheel)], ({ size }) => words(size)),
      printCell(tire?.dateCodeSeen),
      ageCell(tire),
    ],
  }
}

const printCell = (seen: SidewallPrint | undefined): Cell =>
  seen === undefined
    ? notChecked
    : seen.readable
      ? words(seen.text)
      : gap(says.unread(english.tirePrints.unread[seen.why]))

/** By the date code where one was read, which says whether the decade is known; else as it was entered. */
const ageCell = (tire: OrderState['arrival']['tires'][WheelPosition]): Cell => {
  const age = tire ? tireAgeSeen(tire) : null
  return age
    ? words(english.tirePrints.age(age))
    : orNotChecked(tire?.tireAgeYears, (years) => words(says.years(years)))
}

/** Tires that are not those of the sheet, each in a sentence. */
const otherTires = (state: OrderState): Block[] =>
  wheelsOf(state).flatMap((wheel): Block[] => {
    const tire = state.arrival.tires[wheel]
    const differs = sizeComparedAt(state, wheel)
    const bySheet = tiresOf(state.sheet?.sheet)?.[axleOf(wheel)]?.size
    if (!differs || isAsNamed(differs) || !tire?.sizeSeen?.readable || bySheet === undefined) return []
    const text = english.tirePrints.otherTire({ wheel, onTire: tire.sizeSeen.text, bySheet, differs })
    return [paragraph(text, tire.written.seq)]
  })

const stemCell = (tire: TireRecord | null): Cell => {
  const parts = [
    ...(tire?.valve ? [codes.valve[tire.valve]] : []),
    ...(tire?.stem ? [codes.stem[tire.stem]] : []),
  ]
  if (parts.length === 0) return notChecked
  return tire?.stem === 'sound' ? good(parts.join(', ')) : words(parts.join(', '))
}

const damageCell = (damage: readonly string[]): Cell =>
  damage.length === 0 ? good(english.report.cells.noneSeen) : words(says.damages(damage))
