import type { StockPart } from '@bayledger/contract/settings'
import type { Torque } from '@bayledger/reckoning/quantity'
import type { Row } from '../form/rows.ts'

type FittedPart = Pick<StockPart, 'partNumber' | 'nutLbfIn' | 'screwLbfIn'>

/**
 * What the stem's nut or screw may be torqued to: by the maker of the sensor that was drawn, where the stock list has its figure,
 * and by the vehicle's sheet. The maker's own comes first.
 */
export const stemTorques = (
  part: FittedPart | undefined,
  stem: 'snap-in' | 'clamp-in' | null,
  onSheet: Torque | null,
): readonly Torque[] => {
  // A list that a tablet kept from before has neither.
  const own = (stem === 'clamp-in' ? part?.nutLbfIn : stem === 'snap-in' ? part?.screwLbfIn : null) ?? null
  const ofPart: Torque[] = own === null ? [] : [{ value: own, unit: 'lbf·in' }]
  const ofSheet = onSheet === null || isSame(onSheet, ofPart[0]) ? [] : [onSheet]
  return [...ofPart, ...ofSheet]
}

const isSame = (one: Torque, other: Torque | undefined): boolean =>
  one.value === other?.value && one.unit === other.unit

export const torqueText = ({ value, unit }: Torque): string => `${value} ${unit}`

/** One press where one figure is known; where part and sheet differ, both, and which goes first. */
export const stemTorqueRow = (part: FittedPart | undefined, torques: readonly Torque[]): Row => {
  const [first, other] = torques
  if (first === undefined)
    return {
      kind: 'number',
      key: 'torque',
      label: 'Torqued to',
      unit: 'lbf·in',
      low: 1,
      high: 200,
      hint: "From the sensor maker's sheet: lbf·in, not lbf·ft.",
    }
  return {
    kind: 'choice',
    key: 'torqued',
    label: 'Torqued',
    options: torques.map((torque) => ({
      value: torqueText(torque),
      label: `At ${torqueText(torque)}`,
      detail:
        other === undefined
          ? 'in one pull'
          : torque === first
            ? (part?.partNumber ?? '')
            : 'the vehicle’s sheet',
    })),
    ...(other === undefined
      ? {}
      : {
          hint: `${part?.partNumber ?? 'The part'} asks for ${torqueText(first)}, the vehicle’s sheet for ${torqueText(other)}. The maker’s sheet of the part in your hand governs.`,
        }),
  }
}
