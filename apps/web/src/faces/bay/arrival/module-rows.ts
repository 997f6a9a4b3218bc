import type { PayloadOf } from '@bayledger/ledger/registry'
import type { OrderState } from '@bayledger/ledger/state'
import type { Phase } from '@bayledger/ledger/subjects/arrival/kinds'
import type { CodeClass, ModuleCode } from '@bayledger/reckoning/evidence/evidence'
import type { IdNotation } from '@bayledger/reckoning/sensor/sensor-id'
import { readingOrder, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import { wheelNames } from '@bayledger/wording/en/wheels'
import {
  idFault,
  idMeant,
  knownIn,
  lastFour,
  severalIds,
  severalIdsFault,
} from '../../../features/sensor-ids/id-text.ts'
import { idsAtOnce, orderWords } from '../../../features/sensor-ids/ids-at-once.ts'
import { expectedIds, knownIds } from '../../../features/sensor-ids/known-ids.ts'
import { noneOfThem, type RowOption, type RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { codeTextFault } from './code-text.ts'

/** Wheels whose IDs the vehicle can hold. */
const storedWheels = (state: OrderState): readonly WheelPosition[] =>
  state.sheet?.sheet.spareMonitored ? readingOrder : roadPositions

const classes: readonly { value: CodeClass; label: string; perWheel: boolean }[] = [
  { value: 'no-signal', label: 'No signal', perWheel: true },
  { value: 'low-battery', label: 'Battery low', perWheel: true },
  { value: 'low-pressure', label: 'Low pressure', perWheel: true },
  { value: 'receiver', label: 'Receiver fault', perWheel: false },
  { value: 'communication', label: 'Communication lost', perWheel: false },
  { value: 'learn-incomplete', label: 'Learning not finished', perWheel: false },
  { value: 'lamp-circuit', label: 'Lamp circuit', perWheel: false },
]

const codeClasses: Row = {
  kind: 'several',
  key: 'codes',
  label: 'Stored codes',
  noneWord: 'no codes',
  options: classes.map(({ value, label }) => ({ value, label })),
}

const chosenClasses = (values: RowValues) =>
  classes.filter(({ value }) => (values.codes ?? '').split(',').includes(value))

/** The codes by class, then the wheels that they name. */
const codeRows = (wheels: readonly WheelPosition[], values: RowValues): readonly Row[] => {
  const chosen = chosenClasses(values)
  return [
    codeClasses,
    ...chosen
      .filter(({ perWheel }) => perWheel)
      .map(
        ({ value, label }): Row => ({
          kind: 'several',
          key: `at.${value}`,
          label: `${label}: which wheel`,
          noneWord: 'no wheel named',
          options: wheels.map((wheel) => ({ value: wheel, label: wheel })),
        }),
      ),
    ...(chosen.length > 0
      ? [
          {
            kind: 'text',
            key: 'codeText',
            label: 'Codes as shown',
            optional: 'not noted',
            exact: true,
            fault: codeTextFault,
          } as const,
        ]
      : []),
  ]
}

const state: Row = {
  kind: 'choice',
  key: 'state',
  label: 'Control module',
  options: [
    { value: 'read', label: 'Can be read' },
    { value: 'blank', label: 'Is blank', detail: 'stores no IDs' },
    { value: 'unreadable', label: 'Cannot be read' },
  ],
}

/** Rows for what the vehicle has stored; nothing is cleared before it is recorded. */
export const moduleRows = (
  order: OrderState,
  values: RowValues,
  phase: Phase,
  listedParts: readonly string[],
): readonly Row[] => {
  if (values.state === undefined || values.state === null) return [state]
  if (values.state === 'unreadable')
    return [
      state,
      {
        kind: 'text',
        key: 'why',
        label: 'Why not',
        suggestions: [
          'no reader for this vehicle',
          'no connection',
          'not readable on this vehicle',
          'battery too low',
        ].map((reason) => ({ value: reason, label: reason })),
      },
    ]
  const wheels = storedWheels(order)
  const codes = codeRows(wheels, values)
  if (values.state === 'blank') return [state, ...codes]
  const taken = takenAtOnce(values, wheels)
  return [
    state,
    {
      kind: 'text',
      suggestions: asExpected(order, wheels, phase),
      key: 'all',
      label: 'All IDs at once',
      exact: true,
      paste: true,
      scan: { wanted: 'wheels', listedParts },
      optional: 'one by one',
      hint: `Paste or scan them: ${orderWords(wheels)}, or each after its wheel. No paste: go on one by one.`,
      fault: (text) => {
        const read = idsAtOnce(text, wheels)
        return read.ok ? undefined : read.says
      },
    },
    {
      kind: 'choice',
      key: 'notation',
      label: 'IDs are shown',
      optional: 'not shown',
      ...(taken?.notation ? { aside: true } : {}),
      options: [
        { value: 'hex', label: 'With letters', detail: 'hexadecimal' },
        { value: 'decimal', label: 'Digits only', detail: 'decimal' },
      ],
    },
    ...wheels.map((wheel): Row => idRow(order, wheel, notationOf(values, wheels), listedParts)),
    ...codes,
    {
      kind: 'text',
      key: 'stray',
      label: 'IDs of no wheel',
      exact: true,
      optional: 'none heard',
      aside: true,
      hint: 'IDs that were heard nearby and belong to none of these wheels, with a space between.',
      fault: severalIdsFault,
    },
  ]
}

const idRow = (
  order: OrderState,
  wheel: WheelPosition,
  notation: IdNotation,
  listedParts: readonly string[],
): Row => {
  const known = knownIn(knownIds(order, wheel), notation)
  const heard = order.arrival.wheels[wheel]?.sensor?.reading
  const heardId = heard?.answer === 'answered' ? heard.id : null
  const [heardHere] = heardId === null ? [] : knownIn([{ id: heardId, says: '' }], notation)
  const options = known.map(({ id, says }) => ({
    value: id,
    label: `${id === heardHere?.id ? 'same as heard' : says} · ${lastFour(id)}`,
  }))
  return {
    kind: 'text',
    key: `id.${wheel}`,
    label: `Stored for ${wheel}`,
    hex: true,
    optional: 'not shown',
    asked: true,
    hint: `The ID that the vehicle holds for the ${wheelNames[wheel]} wheel.`,
    suggestions: options.slice(0, 4),
    scan: { wanted: 'sensor-id', listedParts },
    fault: (text) => idFault(text, known, notation),
  }
}

/** At the closing check, one press for who has compared every wheel with what is to be expected there. */
const asExpected = (
  order: OrderState,
  wheels: readonly WheelPosition[],
  phase: Phase,
): readonly RowOption[] => {
  const expected = wheels.flatMap((wheel) => {
    const [first] = expectedIds(order, wheel)
    return first ? [{ wheel, id: first.id }] : []
  })
  return phase === 'arrival' || expected.length < wheels.length
    ? []
    : [
        {
          value: expected.map(({ wheel, id }) => `${wheel} ${id}`).join(' '),
          label: 'All as expected',
          detail: expected.map(({ wheel, id }) => `${wheel} ${lastFour(id)}`).join(' · '),
        },
      ]
}

/** The IDs that came in one text, if they did. */
const takenAtOnce = ({ all }: RowValues, wheels: readonly WheelPosition[]) => {
  const read = all ? idsAtOnce(all, wheels) : null
  return read?.ok ? read : null
}

/**
 * The values with the IDs of one text laid out by wheel; an ID that was typed for a wheel since counts more. A wheel that
 * the text leaves out is not shown.
 */
export const laidOut = (order: OrderState, values: RowValues): RowValues => {
  const wheels = storedWheels(order)
  const taken = takenAtOnce(values, wheels)
  if (taken === null) return values
  return {
    ...(taken.notation === null ? {} : { notation: taken.notation }),
    ...Object.fromEntries(wheels.map((wheel) => [`id.${wheel}`, taken.ids[wheel] ?? null])),
    ...values,
  }
}

/** The notation in which the vehicle shows its IDs; a reader's usual one where unknown. */
const notationOf = (values: RowValues, wheels: readonly WheelPosition[]): IdNotation =>
  (values.notation ?? takenAtOnce(values, wheels)?.notation) === 'decimal' ? 'decimal' : 'hex'

type ModuleRead = Omit<PayloadOf<'module.read'>, 'phase' | 'stepKey'>

/** What was filled in, as the ledger takes it: stored IDs in the notation in which the vehicle shows them. */
export const moduleReadOf = (order: OrderState, filled: RowValues): ModuleRead => {
  const wheels = storedWheels(order)
  const values = laidOut(order, filled)
  const ids = wheels.flatMap((wheel): [WheelPosition, string][] => {
    const notation = notationOf(values, wheels)
    const known = knownIn(knownIds(order, wheel), notation)
    const id = idMeant(values[`id.${wheel}`] ?? '', known, notation)
    return id === null ? [] : [[wheel, id]]
  })
  return {
    state: values.state === 'blank' ? 'blank' : values.state === 'unreadable' ? 'unreadable' : 'read',
    notation: values.notation === 'hex' || values.notation === 'decimal' ? values.notation : null,
    ids: values.state === 'read' ? Object.fromEntries(ids) : {},
    codes: values.state === 'unreadable' ? [] : codesOf(values),
    strayIds: severalIds(values.stray ?? '').flatMap((typed) => idMeant(typed, []) ?? []),
    why: values.state === 'unreadable' ? (values.why ?? '').trim() : null,
  }
}

const codesOf = (values: RowValues): ModuleCode[] => {
  const text = (values.codeText ?? '').trim().slice(0, 200)
  return chosenClasses(values).flatMap(({ value, perWheel }): ModuleCode[] => {
    const at = (values[`at.${value}`] ?? '').split(',')
    const wheels = perWheel ? readingOrder.filter((wheel) => at.includes(wheel)) : []
    const code = { class: value, ...(text === '' ? {} : { text }) }
    return wheels.length === 0 ? [code] : wheels.map((wheel) => ({ ...code, wheel }))
  })
}

/**
 * What was read already, to be added to: the rows as they were filled in. One that could not be read starts over, and
 * so do codes with words of their own, for this form keeps one text for all.
 */
export const rowsAsRead = (order: OrderState, read: Omit<ModuleRead, 'why'> | null): RowValues => {
  if (read === null || read.state === 'unreadable') return {}
  return {
    state: read.state,
    ...(read.state === 'read' ? { all: null } : {}),
    ...(read.notation === null ? {} : { notation: read.notation }),
    ...Object.fromEntries(
      storedWheels(order).flatMap((wheel) => (read.ids[wheel] ? [[`id.${wheel}`, read.ids[wheel]]] : [])),
    ),
    ...codesAsRead(read.codes),
    ...(read.strayIds.length === 0 ? {} : { stray: read.strayIds.join(' ') }),
  }
}

const codesAsRead = (codes: readonly ModuleCode[]): RowValues => {
  const [text, ...others] = new Set(codes.map((code) => code.text ?? ''))
  if (others.length > 0) return {}
  const named = [...new Set(codes.map((code) => code.class))]
  return {
    codes: named.length === 0 ? noneOfThem : named.join(','),
    ...Object.fromEntries(
      named.map((one) => {
        const at = codes.flatMap((code) => (code.class === one && code.wheel ? [code.wheel] : []))
        return [`at.${one}`, at.length === 0 ? noneOfThem : at.join(',')]
      }),
    ),
    ...(text ? { codeText: text } : {}),
  }
}
