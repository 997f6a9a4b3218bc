import { proofDriveMinutes } from '@bayledger/ledger/questions/proof'
import { isFixed } from '@bayledger/ledger/questions/verdicts'
import { lights } from '@bayledger/wording/en/lights'
import { verdicts } from '@bayledger/wording/en/verdicts'
import { numberFrom } from '../../../ui/number-text.ts'
import type { Row } from '../form/rows.ts'
import { howWords, sourceWords } from './step-words.ts'
import type { WorkFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

const odometer = {
  kind: 'number',
  unit: 'mi',
  low: 0,
  high: 2_000_000,
  limits: { whole: 7, decimals: 1 },
} as const

const lightsAtEnd = (['off', 'solid', 'flash-then-solid'] as const).map((value) => ({
  value,
  label: lights.choice[value].label,
}))
const lamps = [
  { value: 'lights-and-goes-out', label: 'Lights and goes out' },
  { value: 'stays-lit', label: 'Stays lit' },
  { value: 'dark', label: 'Stays dark' },
] as const

const rows: readonly Row[] = [
  { ...odometer, key: 'out', label: 'Odometer out' },
  {
    kind: 'number',
    key: 'minutes',
    label: 'Driven',
    unit: 'min',
    low: 0,
    high: 600,
    limits: { whole: 3, decimals: 0 },
    hint: 'Only minutes between 30 and 60 mph count.',
  },
  { ...odometer, key: 'in', label: 'Odometer in' },
  { kind: 'choice', key: 'light', label: 'Light at the end', options: lightsAtEnd },
  { kind: 'choice', key: 'lamp', label: 'Key off, key on: the lamp', options: lamps },
]

/** The proof drive: drives add up until the light has stayed off for the minutes that a warning may take. */
export function DriveForm(props: WorkFormProps) {
  const { state, step } = props
  const verdict = isFixed(state)
  return (
    <WorkRows
      {...props}
      kind="drive.done"
      rows={() => rows}
      recordWord="Record the drive"
      how={
        state.drives.length > 0 && verdict.verdict !== 'proven'
          ? `So far: ${verdicts.because(verdict)}. ${howWords(step)}`
          : howWords(step)
      }
      whyNot={(values) => {
        const [out, back] = [numberFrom(values.out ?? ''), numberFrom(values.in ?? '')]
        return out !== null && back !== null && back < out
          ? 'The odometer reads less after the drive than before. Read both again.'
          : undefined
      }}
      payload={(values) => {
        const [out, minutes, back] = [values.out, values.minutes, values.in].map((text) =>
          numberFrom(text ?? ''),
        )
        const light = lightsAtEnd.find(({ value }) => value === values.light)
        const lamp = lamps.find(({ value }) => value === values.lamp)
        if (out == null || minutes == null || back == null || !light || !lamp) return null
        return {
          stepKey: step.stepKey,
          minutes,
          odometerOut: { value: out, unit: 'mi' },
          odometerIn: { value: back, unit: 'mi' },
          lightAtEnd: light.value,
          lampCheckAfter: lamp.value,
        }
      }}
      figure={() => (
        <p>
          <strong>{proofDriveMinutes} min</strong> <span className="step-source">{sourceWords(step)}</span>
        </p>
      )}
    />
  )
}
