import { blankOrder, type OrderState } from '@bayledger/ledger/state'
import { describe, expect, it } from 'vitest'
import { closedElsewhere, noteBegun, typedWords } from './closed-elsewhere.ts'

const step = { stepKey: 'RR.pressure', wheel: 'RR' }

const closedBy = (deviceId: string): OrderState =>
  ({
    ...blankOrder('shop', 'order'),
    plan: { plan: { planVersion: 1, steps: [step] } },
    closed: {
      'RR.pressure': {
        written: {
          by: { kind: 'staff', staffId: 'greta' },
          deviceId,
          writtenAt: '2026-01-12T16:40:00.000Z',
        },
      },
    },
  }) as unknown as OrderState

/** Forms that were begun when nine entries of the order were known here. */
const filled = (...forms: [string, unknown][]) => ({
  forms: new Map(forms),
  begunAt: new Map(forms.map(([key]) => [key, 9])),
})

const halfFilled = { values: { outdoor: '27', left: '33.0', note: null }, active: 'left' }

describe('a step that another tablet closed', () => {
  it('is named with who closed it and what was typed here', () => {
    const [found] = closedElsewhere(closedBy('other'), 'here', filled(['order/RR.pressure', halfFilled]))
    expect(found).toMatchObject({
      by: { kind: 'staff', staffId: 'greta' },
      writtenAt: '2026-01-12T16:40:00.000Z',
      formKey: 'order/RR.pressure',
      typed: '27, 33.0',
    })
  })

  it.each<[string, string, string | null, [string, unknown]]>([
    ['this tablet closed it', 'here', 'here', ['order/RR.pressure', halfFilled]],
    ['nothing was typed', 'other', 'here', ['order/RR.pressure', { values: {}, active: null }]],
    ['another step was typed', 'other', 'here', ['order/RR.pressures', halfFilled]],
    ['another order was typed', 'other', 'here', ['another/RR.pressure', halfFilled]],
    ['this tablet does not know which it is', 'other', null, ['order/RR.pressure', halfFilled]],
  ])('is not named where %s', (_why, closing, here, form) => {
    expect(closedElsewhere(closedBy(closing), here, filled(form))).toEqual([])
  })
})

/** The entry with this number, of another tablet, recorded what was found on arrival. */
const recordedAs = (seq: number): OrderState => {
  const written = {
    seq,
    by: { kind: 'staff', staffId: 'greta' },
    deviceId: 'other',
    writtenAt: '2026-01-12T16:40:00.000Z',
  }
  return {
    ...blankOrder('shop', 'order'),
    surroundings: { written },
    arrival: {
      wheels: { LF: { gauge: { written }, sensor: { written } } },
      tires: { LF: { written } },
      module: { written },
      telltale: { written },
    },
  } as unknown as OrderState
}

describe('a task of the arrival check that another tablet recorded', () => {
  it.each([
    ['gauge/LF', { what: 'gauge', wheel: 'LF' }],
    ['sensor/LF', { what: 'sensor', wheel: 'LF' }],
    ['tire/LF', { what: 'tire', wheel: 'LF' }],
    ['tire/LF/parts', { what: 'tire', wheel: 'LF' }],
    ['surroundings', { what: 'surroundings' }],
    ['light', { what: 'warning-light' }],
    ['module', { what: 'control-module' }],
  ])('is named by its form %s', (key, task) => {
    expect(closedElsewhere(recordedAs(10), 'here', filled([`order/${key}`, halfFilled]))).toMatchObject([
      { closed: { task }, by: { staffId: 'greta' }, typed: '27, 33.0' },
    ])
  })

  it.each([
    ['it was recorded before the form was begun', 9, 'here', 'order/gauge/LF'],
    ['this tablet recorded it', 10, 'other', 'order/gauge/LF'],
    ['another wheel was typed', 10, 'here', 'order/gauge/RF'],
    ['nobody records it twice', 10, 'here', 'order/door-label'],
  ])('is not named where %s', (_why, seq, here, key) => {
    expect(closedElsewhere(recordedAs(seq), here, filled([key, halfFilled]))).toEqual([])
  })
})

it('a form is begun when something is typed into it, and anew after it was emptied', () => {
  const key = 'order/gauge/LF'
  expect(noteBegun('order', 4, new Map([[key, { values: {} }]])).get(key)).toBeUndefined()
  expect(noteBegun('order', 5, new Map([[key, halfFilled]])).get(key)).toBe(5)
  expect(noteBegun('order', 6, new Map([[key, halfFilled]])).get(key)).toBe(5)
  expect(noteBegun('another', 7, new Map([[key, halfFilled]])).get(key)).toBe(5)
  expect(noteBegun('order', 8, new Map()).get(key)).toBeUndefined()
  expect(noteBegun('order', 9, new Map([[key, halfFilled]])).get(key)).toBe(9)
})

describe('what was typed', () => {
  it.each([
    [{ remark: 'seized' }, 'seized'],
    [[1, 3], 'moved: 1, 3'],
    [[], ''],
    [true, ''],
    [null, ''],
  ])('%j reads "%s"', (content, words) => {
    expect(typedWords(content)).toBe(words)
  })
})
