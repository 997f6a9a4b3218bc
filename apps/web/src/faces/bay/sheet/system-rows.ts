import type { EnteredFigure } from '@bayledger/contract/sheets'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { readFrom, sourceRows } from './row-parts.ts'

export const watchesRow: Row = {
  kind: 'choice',
  key: 'system',
  label: 'The vehicle watches its tires',
  options: [
    { value: 'direct', label: 'by a sensor in each wheel' },
    { value: 'indirect', label: 'without sensors, by wheel speed' },
    { value: 'none', label: 'not at all' },
  ],
}

const yesOrNo = (key: string, label: string): Row => ({
  kind: 'choice',
  key,
  label,
  options: [
    { value: 'yes', label: 'yes' },
    { value: 'no', label: 'no' },
  ],
})

const warnRow = (axle: 'front' | 'rear' | 'spare'): Row => ({
  kind: 'number',
  key: `warn.${axle}`,
  label: `It warns below, ${axle}`,
  unit: 'psi',
  low: 5,
  high: 120,
  limits: { whole: 3, decimals: 1 },
  optional: 'not printed',
})

/** The rows of how a vehicle watches its tires, and where it warns. */
export const systemRows = (values: RowValues): readonly Row[] => [
  watchesRow,
  ...(values.system === 'none'
    ? []
    : [
        yesOrNo('shows', 'Shows pressures'),
        ...(values.system === 'direct'
          ? [yesOrNo('finds', 'Finds wheels by itself'), yesOrNo('spare', 'The spare has a sensor')]
          : []),
        warnRow('front'),
        warnRow('rear'),
        ...(values.system === 'direct' && values.spare === 'yes' ? [warnRow('spare')] : []),
      ]),
  ...sourceRows({ value: 'vehicle maker’s handbook, tires, page ', label: 'Handbook, tires, page …' }),
]

/** How the vehicle watches its tires as the rows say. What a system cannot do is not asked and is no. */
export const systemIn = (values: RowValues): EnteredFigure => {
  const system = values.system === 'direct' || values.system === 'indirect' ? values.system : 'none'
  const isDirect = system === 'direct'
  const spareMonitored = isDirect && values.spare === 'yes'
  const warns = (axle: string) => numberFrom(values[`warn.${axle}`] ?? '')
  const at = {
    front: system === 'none' ? null : warns('front'),
    rear: system === 'none' ? null : warns('rear'),
    spare: spareMonitored ? warns('spare') : null,
  }
  return {
    figure: 'system',
    system,
    pressureDisplay: system !== 'none' && values.shows === 'yes',
    locatesWheels: isDirect && values.finds === 'yes',
    spareMonitored,
    warnAtPsi: Object.values(at).every((psi) => psi === null) ? null : at,
    ...readFrom(values),
  }
}
