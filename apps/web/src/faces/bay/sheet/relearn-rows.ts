import type { EnteredFigure } from '@bayledger/contract/sheets'
import { SheetRelearn } from '@bayledger/reckoning/sheet'
import { tooLong } from '../../../lib/fault-words.ts'
import { numberFrom } from '../../../ui/number-text.ts'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { readFrom, sourceRows, text } from './row-parts.ts'

type Method = SheetRelearn['method']
type Figure = 'timeLimitMinutes' | 'parkMinutes' | 'driveMinutes' | 'driveSpeedMph'

/** The figures that belong to each method, as its procedure shows them. */
const figuresOfMethod: Readonly<Record<Method, readonly Figure[]>> = {
  stationary: ['timeLimitMinutes'],
  connector: ['driveMinutes'],
  automatic: ['parkMinutes', 'driveMinutes', 'driveSpeedMph'],
  reset: ['driveMinutes'],
}

const figureLabels: Readonly<Record<Figure, string>> = {
  timeLimitMinutes: 'All wheels within',
  parkMinutes: 'Parked first, at least',
  driveMinutes: 'Driven then',
  driveSpeedMph: 'Driven at',
}

const methodOf = ({ method }: RowValues): Method | null =>
  SheetRelearn.shape.method.options.find((one) => one === method) ?? null

const figureRow = (key: Figure): Row => ({
  kind: 'number',
  key,
  label: figureLabels[key],
  unit: key === 'driveSpeedMph' ? 'mph' : 'min',
  low: 1,
  high: key === 'driveSpeedMph' ? 80 : 600,
  limits: { whole: 3, decimals: 0 },
  optional: 'not printed',
})

const words = (key: string, label: string, hint: string, optional?: string): Row => ({
  kind: 'text',
  key,
  label,
  hint,
  fault: (typed) => tooLong(typed, 200),
  ...(optional === undefined ? {} : { optional }),
})

/** The rows of how a vehicle learns its sensors or its tires, as its maker's procedure says. */
export const relearnRows = (values: RowValues): readonly Row[] => {
  const method = methodOf(values)
  return [
    {
      kind: 'choice',
      key: 'method',
      label: 'Method',
      options: [
        { value: 'stationary', label: 'Standing', detail: 'wheel by wheel' },
        { value: 'connector', label: 'By the connector', detail: 'IDs sent to the vehicle' },
        { value: 'automatic', label: 'By driving' },
        { value: 'reset', label: 'By reset', detail: 'no sensors in the wheels' },
      ],
    },
    words('entry', 'How it begins', 'In the maker’s words: key, buttons, menu.'),
    words('confirmation', 'How it confirms', 'A chirp, a message, the lamps.'),
    words('exit', 'How it ends', 'What is done last.'),
    ...(method === null ? [] : figuresOfMethod[method].map(figureRow)),
    words('trap', 'What goes wrong here', 'As others of the shop have seen it.', 'nothing known'),
    ...sourceRows({
      value: 'vehicle maker’s service book, tires, page ',
      label: 'Service book, tires, page …',
    }),
  ]
}

/** The procedure that the rows describe: only the figures that belong to its method. */
export const relearnIn = (values: RowValues): EnteredFigure => {
  const method = methodOf(values) ?? 'stationary'
  const figure = (key: Figure): number | null =>
    figuresOfMethod[method].includes(key) ? numberFrom(values[key] ?? '') : null
  return {
    figure: 'relearn',
    relearn: {
      method,
      entry: text(values, 'entry'),
      confirmation: text(values, 'confirmation'),
      exit: text(values, 'exit'),
      timeLimitMinutes: figure('timeLimitMinutes'),
      parkMinutes: figure('parkMinutes'),
      driveMinutes: figure('driveMinutes'),
      driveSpeedMph: figure('driveSpeedMph'),
      knownTrap: text(values, 'trap') || null,
    },
    ...readFrom(values),
  }
}
