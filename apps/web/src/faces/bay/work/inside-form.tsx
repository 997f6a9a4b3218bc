import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { punctureRows, puncturesOf } from '../holes/puncture-rows.ts'
import type { WheelFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

const insides = [
  { value: 'sound', label: 'Sound' },
  { value: 'run-low-damage', label: 'Damage from running low' },
  { value: 'cord', label: 'Cord showing' },
  { value: 'separation', label: 'Coming apart' },
  { value: 'earlier-repair', label: 'Earlier repair' },
  { value: 'foreign-body', label: 'Foreign body' },
] as const

const rows: readonly Row[] = [
  { kind: 'choice', key: 'inside', label: 'Inside the tire', options: insides },
  {
    kind: 'choice',
    key: 'sealant',
    label: 'Sealant inside',
    options: [
      { value: 'no', label: 'None' },
      { value: 'yes', label: 'Sealant inside' },
    ],
  },
]

export function InsideForm(props: WheelFormProps) {
  const { state, step, wheel } = props
  const isSearched = (state.plan?.plan.steps ?? []).some(
    (one) => one.wheel === wheel && (one.code === 'judge-leak' || one.code === 'repair-leak'),
  )
  const wasSeen = state.arrival.tires[wheel]?.tireDamage?.includes('puncture') ?? false
  const asksForHoles = ({ inside }: RowValues) =>
    isSearched || wasSeen || inside === 'foreign-body' || inside === 'earlier-repair'
  return (
    <WorkRows
      {...props}
      kind="tire.inspected"
      rows={(values) => (asksForHoles(values) ? [...rows, ...punctureRows(values)] : rows)}
      recordsItself
      recordWord="Record the inside"
      payload={(values) => ({
        when: 'inside',
        stepKey: step.stepKey,
        wheel,
        valve: null,
        stem: null,
        treadDepth32nds: null,
        tireAgeYears: null,
        sensorAgeMonths: null,
        sealantSeen: values.sealant === 'yes',
        tireDamage: null,
        fastenerDamage: null,
        ...(asksForHoles(values) ? { punctures: puncturesOf(values) } : {}),
        inside: insides.find(({ value }) => value === values.inside)?.value ?? null,
      })}
    />
  )
}
