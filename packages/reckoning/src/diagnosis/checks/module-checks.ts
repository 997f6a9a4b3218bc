import { idText } from '../../sensor/sensor-id.ts'
import type { Facts } from '../facts/facts.ts'
import type { FieldCheck, Supposition } from './field-check.ts'
import { each } from './field-check.ts'

const sensing = (facts: Facts): boolean => facts.sensing
const holdsAnyId = (facts: Facts): boolean => facts.stored.all.size > 0

/** What can be read from the vehicle's control module, and from the shop's own records. */
export const moduleChecks: readonly FieldCheck[] = [
  {
    field: 'controlModule.state',
    seconds: 60,
    applies: sensing,
    suppositions: (facts) => [
      { 'controlModule.state': 'read', ...idsInPlace(facts) },
      { 'controlModule.state': 'blank' },
      { 'controlModule.state': 'unreadable' },
    ],
  },
  {
    field: 'controlModule.notation',
    seconds: 10,
    applies: holdsAnyId,
    suppositions: (facts) => {
      const ids = Object.values(facts.evidence.controlModule?.ids ?? {})
      const canBeDecimal = ids.every((id) => id == null || /^\d+$/.test(id))
      return canBeDecimal ? each('controlModule.notation', ['hex', 'decimal']) : []
    },
  },
  {
    field: 'controlModule.ids',
    seconds: 60,
    applies: (facts) => facts.sensing && !holdsAnyId(facts) && facts.stored.state !== 'blank',
    suppositions: (facts) =>
      [idsInPlace(facts), idsExchanged(facts), idsUnknown(facts)].map((ids) => ({
        'controlModule.state': 'read',
        'controlModule.notation': 'hex',
        ...ids,
      })),
  },
  ...(['LF', 'RF', 'RR', 'LR', 'SP'] as const).map(
    (position): FieldCheck => ({
      field: `controlModule.ids.${position}`,
      seconds: 60,
      applies: (facts) => holdsAnyId(facts) && (position !== 'SP' || facts.spareMonitored),
      suppositions: (facts) => {
        const heard = facts.wheel(position)?.sensor.idKey
        const notation = facts.stored.decimal ? 'decimal' : 'hex'
        return each(
          `controlModule.ids.${position}`,
          [...(heard ? [heard] : []), ownId(position)].map((key) => idText(key, notation)),
        )
      },
    }),
  ),
  {
    field: 'controlModule.codes',
    seconds: 60,
    applies: sensing,
    suppositions: (facts) => {
      const wheel = (facts.monitored.find((one) => !one.sensor.answered) ?? facts.monitored[0])?.position
      const ofWheel =
        wheel === undefined
          ? []
          : [
              { class: 'no-signal', wheel },
              { class: 'low-battery', wheel },
            ]
      return each('controlModule.codes', [[], [{ class: 'receiver' }], ...ofWheel.map((code) => [code])])
    },
  },
  {
    field: 'strayIds',
    seconds: 30,
    applies: sensing,
    suppositions: () => [],
  },
  {
    field: 'history.earlierReadings',
    seconds: 20,
    suppositions: (facts) => {
      const readings = facts.road.flatMap((wheel) => {
        const pressure = facts.evidence.vehicle?.placard?.[wheel.position.endsWith('F') ? 'front' : 'rear']
        return typeof pressure === 'number'
          ? [{ wheel: wheel.position, pressure, temperature: 68, daysAgo: 30 }]
          : []
      })
      const inUnit = readings.map((reading) => ({
        ...reading,
        temperature: facts.evidence.units.temperature === 'F' ? 68 : 20,
      }))
      return each('history.earlierReadings', [[], inUnit])
    },
  },
  {
    field: 'history.idsOnOtherVehicles',
    seconds: 10,
    applies: sensing,
    suppositions: (facts) => {
      const unknown = facts.road.flatMap(({ sensor }) =>
        sensor.idKey !== null && !facts.stored.all.has(sensor.idKey) ? [sensor.idKey] : [],
      )
      return unknown.length === 0 ? [] : each('history.idsOnOtherVehicles', [[], unknown])
    },
  },
  {
    field: 'history.ourWorkOn',
    seconds: 10,
    suppositions: (facts) => each('history.ourWorkOn', [[], facts.road.map((wheel) => wheel.position)]),
  },
  {
    field: 'history.partsUnderWarranty',
    seconds: 10,
    suppositions: (facts) =>
      each('history.partsUnderWarranty', [[], facts.road.map((wheel) => wheel.position)]),
  },
]

/** The vehicle holds for each wheel the ID that the wheel sends, or, where it is silent, an ID of its own. */
const idsInPlace = (facts: Facts): Supposition =>
  Object.fromEntries(
    facts.monitored.map(({ position, sensor }) => [
      `controlModule.ids.${position}`,
      sensor.idKey ?? ownId(position),
    ]),
  )

const exchangedWith = { LF: 'LR', LR: 'LF', RF: 'RR', RR: 'RF', SP: 'SP' } as const

const idsExchanged = (facts: Facts): Supposition =>
  Object.fromEntries(
    facts.monitored.map(({ position }) => {
      const other = exchangedWith[position]
      return [`controlModule.ids.${position}`, facts.wheel(other)?.sensor.idKey ?? ownId(other)]
    }),
  )

const idsUnknown = (facts: Facts): Supposition =>
  Object.fromEntries(
    facts.monitored.map(({ position }) => [`controlModule.ids.${position}`, ownId(position)]),
  )

const ownIds = { LF: 'FFFFA0', RF: 'FFFFA1', RR: 'FFFFA2', LR: 'FFFFA3', SP: 'FFFFA4' } as const

const ownId = (position: keyof typeof ownIds): string => ownIds[position]
