import { sensorOf } from '@bayledger/reckoning/sheet'
import { lastFour } from '../../../features/sensor-ids/id-text.ts'
import { tooLong } from '../../../lib/fault-words.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { stemTorqueRow, stemTorques, torqueText } from './stem-torques.ts'
import { kitsFor, lotRow, partNumbers, partOption, useStock } from './stock-here.ts'
import type { WheelFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

const stemRow: Row = {
  kind: 'choice',
  key: 'valve',
  label: 'Stem fitted',
  options: [
    { value: 'snap-in', label: 'Rubber, snap-in' },
    { value: 'clamp-in', label: 'Metal, clamp-in' },
  ],
}

/** Old sensor out, new one in: the sensor that was programmed for this wheel, its kit and its torque. */
export function FitForm(props: WheelFormProps) {
  const { state, step, wheel } = props
  const programmed = state.work[wheel]?.programmed
  const valve = sensorOf(state.sheet?.sheet)?.stem ?? null
  const stock = useStock(state.locationId)
  const onSheet = step.figure?.kind === 'torque' ? step.figure.torque : null
  const kitOf = (values: RowValues) =>
    stock.find(({ kind, partNumber }) => kind === 'kit' && partNumber === (values.kit ?? '').trim())
  const part = stock.find(({ partNumber }) => partNumber === state.work[wheel]?.part?.partNumber)
  const stemOf = (values: RowValues) =>
    kitOf(values)?.stem ?? (values.valve === 'clamp-in' ? 'clamp-in' : 'snap-in')
  const torquesFor = (values: RowValues) => stemTorques(part, stemOf(values), onSheet)
  const rows = (values: RowValues): readonly Row[] => [
    {
      kind: 'choice',
      key: 'sensor',
      label: 'Sensor in your hand',
      options: programmed
        ? [
            {
              value: programmed.sensorId,
              label: `Ends in ${lastFour(programmed.sensorId)}`,
              detail: 'as programmed',
            },
          ]
        : [],
    },
    {
      kind: 'text',
      key: 'kit',
      label: 'Kit part number',
      exact: true,
      hint: 'Grommet, washer, nut, core and cap, or stem and screw: each works once.',
      suggestions: kitsFor(stock, valve).map(partOption),
      scan: { wanted: 'part', listedParts: partNumbers(stock) },
      fault: (text) => tooLong(text, 60, 'signs'),
    },
    lotRow('kitLot', 'Lot of the kit', kitOf(values)),
    // A kit on the stock list says for which stem it is; for another one the person picks the stem.
    ...(kitOf(values) ? [] : [stemRow]),
    stemTorqueRow(part, torquesFor(values)),
  ]
  return (
    <WorkRows
      {...props}
      kind="sensor.fitted"
      rows={rows}
      recordsItself
      recordWord="Record the fitted sensor"
      whyNot={(values) =>
        values.torqued && !torquesFor(values).some((one) => torqueText(one) === values.torqued)
          ? 'The stem is another now: choose its torque again.'
          : undefined
      }
      payload={(values) => {
        const typed = numberFrom(values.torque ?? '')
        const torque =
          torquesFor(values).find((one) => torqueText(one) === values.torqued) ??
          (typed === null ? null : ({ value: typed, unit: 'lbf·in' } as const))
        if (!values.sensor || torque === null) return null
        return {
          stepKey: step.stepKey,
          wheel,
          sensorId: values.sensor,
          valve: stemOf(values),
          kitPart: (values.kit ?? '').trim(),
          kitLot: values.kitLot?.trim() || null,
          torque,
        }
      }}
    />
  )
}
