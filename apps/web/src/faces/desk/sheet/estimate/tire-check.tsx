import type { OrderState } from '@bayledger/ledger/state'
import { placardOf, type SpecificationSheet, tiresOf } from '@bayledger/reckoning/sheet'
import { replacementVerdict } from '@bayledger/reckoning/tire/replacement-tire'
import { useState } from 'react'
import { ChoiceGroup } from '../../../../ui/choice-group.tsx'
import { NumberField } from '../../../../ui/number-field.tsx'
import type { TypedFigure } from '../../../../ui/number-text.ts'
import { TextField } from '../../../../ui/text-field.tsx'
import { FoldedCheck } from './folded-check.tsx'
import { verdictWords } from './tire-check-words.ts'
import { TreadCheck } from './tread-check.tsx'

type TireCheckProps = { state: OrderState; sheet: SpecificationSheet }

/** Whether another tire may take the place of the sheet's, and how far the tires of the vehicle are then apart. */
export function TireCheck({ state, sheet }: TireCheckProps) {
  const [axle, setAxle] = useState<'front' | 'rear'>('front')
  const named = tiresOf(sheet)?.[axle]
  const label = placardOf(sheet)?.[axle].psi ?? null
  const [original, setOriginal] = useState<string | null>(null)
  const [fitted, setFitted] = useState('')
  const [vehicle, setVehicle] = useState<'car' | 'truck-or-multipurpose' | null>(null)
  const [onLabel, setOnLabel] = useState<'yes' | 'no' | null>(null)
  const [sidewall, setSidewall] = useState<TypedFigure>(null)
  const [chosen, setChosen] = useState<TypedFigure>(label)
  const [oldLoad, setOldLoad] = useState<TypedFigure>(null)
  const [newLoad, setNewLoad] = useState<TypedFigure>(null)
  if (named === undefined) return <p>The sheet names no tire yet.</p>
  const chosenPsi = figure(chosen)
  const says =
    fitted.trim() === '' || vehicle === null
      ? null
      : verdictWords(
          replacementVerdict({
            vehicle,
            sheet: { size: original ?? named.size, loadClass: named.loadClass },
            fitted,
            newOnLabel: onLabel === null ? null : onLabel === 'yes',
            sidewallMaximum: measured(sidewall, 'psi'),
            chosenPsi,
            tableLoads: { original: measured(oldLoad, 'lb'), fitted: measured(newLoad, 'lb') },
            warnsAtPsi:
              sheet.system !== 'direct'
                ? null
                : (sheet.warnAtPsi?.[axle] ?? (label === null ? null : 0.75 * label)),
          }),
          sheet.system,
        )
  return (
    <FoldedCheck
      summary="Check a replacement tire"
      verdictName="What the check says"
      says={says}
      toEnter="Enter the new tire and what kind of vehicle it is."
      after={<TreadCheck state={state} sheet={sheet} fitted={fitted} />}
    >
      <ChoiceGroup
        label="Axle"
        options={[
          { value: 'front', label: 'Front' },
          { value: 'rear', label: 'Rear' },
        ]}
        value={axle}
        onChange={setAxle}
      />
      <TextField
        label="Tire that the door label names"
        hint={`By the sheet: ${named.size}, ${named.loadClass}. Add load index and speed symbol.`}
        exact
        maxLength={40}
        value={original ?? named.size}
        onChange={setOriginal}
      />
      <TextField
        label="New tire, as its sidewall prints it"
        exact
        maxLength={40}
        value={fitted}
        onChange={setFitted}
      />
      <ChoiceGroup
        label="Vehicle"
        options={[
          { value: 'car', label: 'Car' },
          { value: 'truck-or-multipurpose', label: 'Truck, van or multipurpose' },
        ]}
        value={vehicle}
        onChange={setVehicle}
      />
      <ChoiceGroup
        label="Does the door label name the new size and load index too?"
        options={[
          { value: 'yes', label: 'Yes' },
          { value: 'no', label: 'No' },
        ]}
        value={onLabel}
        onChange={setOnLabel}
      />
      <NumberField
        label="Most that the new sidewall allows"
        unit="psi"
        value={sidewall}
        onChange={setSidewall}
      />
      <NumberField label="Pressure to be set, cold" unit="psi" value={chosen} onChange={setChosen} />
      <NumberField
        label="Load of the old tire at the label’s pressure"
        hint="From the load table of the tire’s maker or its standard, for one tire."
        unit="lb"
        value={oldLoad}
        onChange={setOldLoad}
      />
      <NumberField
        label="Load of the new tire at the pressure to be set"
        hint="From the same kind of table."
        unit="lb"
        value={newLoad}
        onChange={setNewLoad}
      />
    </FoldedCheck>
  )
}

const figure = (typed: TypedFigure): number | null => (typeof typed === 'number' && typed > 0 ? typed : null)

const measured = <Unit extends string>(
  typed: TypedFigure,
  unit: Unit,
): { value: number; unit: Unit } | null => {
  const value = figure(typed)
  return value === null ? null : { value, unit }
}
