import type { OrderState } from '@bayledger/ledger/state'
import type { Temperature } from '@bayledger/reckoning/quantity'
import { useQuery } from '@tanstack/react-query'
import { settingsQuery } from '../../../features/settings/queries.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import { RowForm } from '../form/row-form.tsx'
import type { Row } from '../form/rows.ts'
import { useRecord } from '../record/use-record.ts'
import { fahrenheitOf, tiresOptions } from './temperatures.ts'

const temperature = { kind: 'number', unit: '°F', signed: true, limits: { whole: 3, decimals: 1 } } as const

const rows: readonly Row[] = [
  { ...temperature, key: 'outdoor', label: 'Outdoors', low: -60, high: 130 },
  { kind: 'choice', key: 'tires', label: 'The tires are', options: tiresOptions },
  { ...temperature, key: 'tire', label: 'Air in the tires', low: -60, high: 250, optional: 'not read' },
  { ...temperature, key: 'overnightLow', label: 'Low tonight', low: -60, high: 130, optional: 'not known' },
  {
    kind: 'number',
    key: 'minutesDriven',
    label: 'Driven just before',
    unit: 'min',
    low: 0,
    high: 600,
    limits: { whole: 3, decimals: 0 },
    optional: 'not known',
  },
  {
    ...temperature,
    key: 'lastSet',
    label: 'Outdoors when last set',
    low: -60,
    high: 130,
    optional: 'not known',
  },
  {
    kind: 'number',
    key: 'lastSetAltitude',
    label: 'Altitude when last set',
    unit: 'ft',
    low: -1_500,
    high: 20_000,
    signed: true,
    limits: { whole: 5, decimals: 0 },
    optional: 'not known',
  },
]

/** Temperatures and how warm the tires are: without them no pressure can be judged. */
export function SurroundingsForm({
  state,
  row,
  onDone,
}: {
  state: OrderState
  row?: string | undefined
  onDone: () => void
}) {
  const { record, busy, problem } = useRecord(state.orderId)
  const settings = useQuery(settingsQuery)
  const place = settings.data?.locations.find(({ locationId }) => locationId === state.locationId)
  const before = state.surroundings
  return (
    <RowForm
      draftKey={`${state.orderId}/surroundings`}
      title="Note the temperatures"
      rows={() => rows}
      blank={blankFrom(before)}
      firstRow={row}
      recordWord="Record the temperatures"
      whyNot={(values) =>
        place === undefined
          ? 'The altitude of this place is not loaded yet.'
          : values.lastSetAltitude && !values.lastSet
            ? 'With the altitude when last set goes the temperature then.'
            : undefined
      }
      busy={busy}
      problem={problem}
      onRecord={async (values, form) => {
        if (place === undefined) return false
        const taken = await record(
          'surroundings.recorded',
          {
            surroundings: {
              outdoor: degrees(values.outdoor) ?? { value: 0, unit: 'F' },
              tires: tiresOptions.find(({ value }) => value === values.tires)?.value ?? 'cold',
              tire: degrees(values.tire),
              overnightLow: degrees(values.overnightLow),
              altitudeFeet: place.altitudeFeet,
            },
            minutesDriven: numberFrom(values.minutesDriven ?? ''),
            lastSet: lastSetOf(values),
          },
          'temperatures',
          form,
        )
        if (taken) onDone()
        return taken
      }}
    />
  )
}

/** Nothing is guessed: what is unknown about the day the pressures were set stays open. */
const lastSetOf = (values: RowValues): LastSet | null => {
  const temperature = degrees(values.lastSet)
  return temperature === null ? null : { temperature, altitudeFeet: numberFrom(values.lastSetAltitude ?? '') }
}

type LastSet = NonNullable<NonNullable<OrderState['surroundings']>['lastSet']>

const degrees = (text: string | null | undefined): Temperature | null => {
  const value = numberFrom(text ?? '')
  return value === null ? null : { value, unit: 'F' }
}

const blankFrom = (before: OrderState['surroundings']): RowValues => {
  if (before === null) return {}
  const { outdoor, tires, tire, overnightLow } = before.surroundings
  return {
    outdoor: fahrenheitOf(outdoor),
    tires,
    ...(tire ? { tire: fahrenheitOf(tire) } : {}),
    ...(overnightLow ? { overnightLow: fahrenheitOf(overnightLow) } : {}),
    ...(before.lastSet === null ? {} : { lastSet: fahrenheitOf(before.lastSet.temperature) }),
    ...(before.lastSet?.altitudeFeet == null ? {} : { lastSetAltitude: String(before.lastSet.altitudeFeet) }),
    ...(before.minutesDriven === null ? {} : { minutesDriven: String(before.minutesDriven) }),
  }
}
