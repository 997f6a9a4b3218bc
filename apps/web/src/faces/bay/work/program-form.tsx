import { authorizedBundles } from '@bayledger/ledger/questions/gates'
import type { OrderState } from '@bayledger/ledger/state'
import { idChoices, type NoCopy } from '@bayledger/reckoning/sensor/id-choice'
import { idKey } from '@bayledger/reckoning/sensor/sensor-id'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { idFault, idMeant } from '../../../features/sensor-ids/id-text.ts'
import { idsElsewhere, knownIdWords, oldIds } from '../../../features/sensor-ids/known-ids.ts'
import { idFaults } from '../../../lib/fault-words.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowOption } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { partNumbers, useStock } from './stock-here.ts'
import type { WheelFormProps } from './work-form.ts'
import { WorkRows } from './work-rows.tsx'

/** A sensor is programmed and read back in the hand, before it is mounted. */
export function ProgramForm(props: WheelFormProps) {
  const { state, step, wheel } = props
  // Only this wheel's own: an ID that is in use at another wheel cannot be given to this one.
  const known = oldIds(state, wheel)
  const listedParts = partNumbers(useStock(state.locationId))
  const rowsFor = (identity: string | null | undefined): readonly Row[] => [
    {
      kind: 'choice',
      key: 'identity',
      label: 'Programmed with',
      options: idOptions(state, wheel),
    },
    {
      kind: 'text',
      key: 'id',
      label: 'ID read back',
      hex: true,
      hint: 'As the reader shows it now, with the sensor in your hand.',
      suggestions:
        identity === 'copy' ? known.map((one) => ({ value: one.id, label: knownIdWords(one) })) : [],
      scan: { wanted: 'sensor-id', listedParts },
      fault: (text) => idFault(text, known) ?? takenFault(text),
    },
    {
      kind: 'number',
      key: 'frequency',
      label: 'Frequency read back',
      unit: 'MHz',
      low: 100,
      high: 3_000,
      limits: { whole: 4, decimals: 2 },
      suggestions:
        marked === null
          ? []
          : [{ value: String(marked), label: `${marked} MHz`, detail: 'as the part says' }],
    },
  ]
  const marked = state.work[wheel]?.part?.matches.frequencyMHz ?? null
  const elsewhere = idsElsewhere(state, wheel)
  const takenFault = (text: string): string | undefined => {
    const meant = idMeant(text, known)
    const taken =
      meant === null ? undefined : elsewhere.find(({ id }) => idKey(id, 'hex') === idKey(meant, 'hex'))
    return taken && idFaults.takenAt(wheelNames[taken.wheel])
  }
  return (
    <WorkRows
      {...props}
      kind="sensor.programmed"
      rows={({ identity: chosen }) => rowsFor(chosen)}
      draftOf={state.work[wheel]?.part?.written.entryId}
      recordsItself
      recordWord="Read back in hand: record"
      payload={(values) => {
        const sensorId = idMeant(values.id ?? '', known)
        const frequencyMHz = numberFrom(values.frequency ?? '')
        if (sensorId === null || frequencyMHz === null) return null
        return {
          stepKey: step.stepKey,
          wheel,
          sensorId,
          identity: values.identity === 'copy' ? 'copy' : 'new',
          frequencyMHz,
          readBack: true,
        }
      }}
    />
  )
}

/** Both IDs, each with what follows from it, or why it cannot be; first the one that the customer agreed to. */
const idOptions = (state: OrderState, wheel: WheelPosition): readonly RowOption[] => {
  const idKnown = oldIds(state, wheel).length > 0
  const { copy, new: fresh } = idChoices({ idKnown, afterwards: 'destroyed', samePosition: true })
  const agreed = plannedIdentity(state, wheel)
  const options = [
    { value: 'new', label: 'A new ID', detail: relearnWords[fresh.relearn] },
    {
      value: 'copy',
      label: "The old sensor's ID",
      detail: copy.allowed ? `${relearnWords[copy.relearn]}; destroy the old sensor` : whyNoCopy[copy.why],
    },
  ]
  return options
    .map((option) =>
      option.value === agreed ? { ...option, detail: `as agreed; ${option.detail}` } : option,
    )
    .toSorted((one, other) => Number(other.value === agreed) - Number(one.value === agreed))
}

const whyNoCopy: Readonly<Record<NoCopy, string>> = {
  'old-id-unknown': 'Nobody knows the old ID.',
  'old-sensor-in-use': 'The old sensor stays in use, and two sensors would send one ID.',
  'other-position':
    'The new sensor goes to another wheel than the old one, where the vehicle expects another ID.',
}

const relearnWords = { required: 'then a relearn', 'often-none': 'often no relearn' } as const

/** What the customer authorized for this wheel's sensor. */
const plannedIdentity = (state: OrderState, wheel: WheelPosition): 'copy' | 'new' | null =>
  authorizedBundles(state)
    .flatMap(({ works }) => works)
    .flatMap((work) => (work.kind === 'fit-sensor' && work.wheel === wheel ? [work.identity] : []))[0] ?? null
