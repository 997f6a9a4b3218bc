import type { OdometerBefore } from '@bayledger/reckoning/vehicle/judge-odometer'
import type { ReactNode } from 'react'
import { money } from '../../../lib/format.ts'
import { CheckGroup, ChoiceGroup } from '../../../ui/choice-group.tsx'
import { Section } from '../../../ui/section.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { comparedWith } from '../odometer.ts'
import { OdometerField } from '../odometer-field.tsx'
import { whoDecides } from '../who-decides.ts'
import { PromiseFields } from './promise-fields.tsx'
import type { WriteUpPartProps } from './write-up-form.ts'

type AgreedProps = WriteUpPartProps & {
  locations: readonly { readonly locationId: string; readonly name: string }[]
  locationId: string | null
  /** Of the place where the vehicle is. */
  timeZone: string
  lookFeeCents: number
  /** At the vehicle's last visit. */
  odometerBefore: OdometerBefore | null
  /** What closes the section: the problem, if any, and the button. */
  children: ReactNode
}

/** What the desk and the customer agree on before the inspection: the stay, the place, the fee and the consent. */
export function AgreedFields({
  form,
  set,
  locations,
  locationId,
  timeZone,
  lookFeeCents,
  odometerBefore,
  children,
}: AgreedProps) {
  return (
    <Section title="Agreed">
      <div className="stack">
        <StayFields form={form} set={set} odometerBefore={odometerBefore} timeZone={timeZone} />
        {locations.length < 2 ? null : (
          <ChoiceGroup
            label="At"
            options={locations.map((location) => ({ value: location.locationId, label: location.name }))}
            value={locationId}
            onChange={(chosen) => set({ locationId: chosen })}
          />
        )}
        <ConsentFields form={form} set={set} lookFeeCents={lookFeeCents} />
        {children}
      </div>
    </Section>
  )
}

function StayFields({
  form,
  set,
  odometerBefore,
  timeZone,
}: WriteUpPartProps & Pick<AgreedProps, 'odometerBefore' | 'timeZone'>) {
  return (
    <div className="fields">
      <ChoiceGroup
        label="The customer"
        options={[
          { value: 'here', label: 'Waits here' },
          { value: 'leaves', label: 'Leaves the vehicle' },
        ]}
        value={form.waitsHere}
        onChange={(waitsHere) => set({ waitsHere })}
      />
      <PromiseFields
        time={form.promised}
        day={form.promisedOn}
        timeZone={timeZone}
        onChange={({ time, day }) => set({ promised: time, promisedOn: day })}
      />
      <OdometerField
        label="Odometer"
        value={form.odometer}
        judge={comparedWith(odometerBefore)}
        confirmed={form.odometerTwice}
        onChange={(odometer) => set({ odometer })}
        onConfirm={(odometerTwice) => set({ odometerTwice })}
      />
    </div>
  )
}

function ConsentFields({ form, set, lookFeeCents }: WriteUpPartProps & { lookFeeCents: number }) {
  return (
    <>
      <ChoiceGroup
        label="Inspection fee"
        options={[
          { value: 'charged', label: money(lookFeeCents), detail: 'charged with or without work' },
          {
            value: 'waived-with-work',
            label: `${money(lookFeeCents)} without work`,
            detail: 'waived if the customer says Yes to work',
          },
          { value: 'waived', label: 'Nothing', detail: 'waived' },
        ]}
        value={form.lookFee}
        onChange={(lookFee) => set({ lookFee })}
      />
      <CheckGroup
        label="The customer agrees to"
        options={[
          { value: 'look', label: 'Inspecting every wheel and the vehicle' },
          { value: 'drive', label: 'A proof drive of up to 30 minutes' },
        ]}
        values={form.consent}
        onChange={(consent) => set({ consent })}
      />
      <ChoiceGroup
        label="Agreed by"
        options={whoDecides}
        value={form.consentBy}
        onChange={(consentBy) => set({ consentBy })}
      />
      {form.consentBy === null || form.consentBy === 'owner' ? null : (
        <TextField
          label="Name of the person who agreed"
          value={form.consentName}
          onChange={(consentName) => set({ consentName })}
        />
      )}
    </>
  )
}
