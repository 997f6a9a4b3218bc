import { EnteredFigure } from '@bayledger/contract/sheets'
import { describe, expect, it } from 'vitest'
import { rowFault, rowsOpen } from '../form/rows.ts'
import { figureIn, figureRows } from './figure-rows.ts'

const label = {
  labelUnit: 'bar',
  front: '2.3',
  rear: '2.5',
  spare: 'none',
  frontTireSize: '205/55R16 91V',
  frontTireClass: 'SL',
  frontTireSidewall: '51',
  rearTire: 'same',
  source: 'placard-photo',
  reference: 'the door',
}
const studs = {
  torque: '107',
  unit: 'N·m',
  thread: 'M12×1.5',
  count: '5',
  order: null,
  fastener: 'nut',
  seat: 'cone',
  handTurns: '7',
  locking: 'no',
  source: 'maker-manual',
  reference: 'page 4',
}

describe('the rows of a label', () => {
  it.each([
    ['psi', '33', { psi: 33, kPa: null }],
    ['kPa', '230', { psi: 33.4, kPa: 230, typed: { value: 230, unit: 'kPa' } }],
    ['bar', '2.3', { psi: 33.4, kPa: null, typed: { value: 2.3, unit: 'bar' } }],
  ] as const)('take the unit that it prints, %s, and keep what was typed', (labelUnit, typed, front) => {
    const values = { ...label, labelUnit, front: typed, rear: typed }
    expect(rowsOpen(figureRows('placard', values), values)).toEqual([])
    const entered = figureIn('placard', values)
    expect(entered).toMatchObject({ placard: { front, rear: front, spare: null } })
    expect(EnteredFigure.safeParse(entered).success).toBe(true)
  })

  it.each([
    ['psi', '230'],
    ['kPa', '33'],
    ['bar', '33'],
  ])('refuse in %s a figure of %s, which is of another unit', (labelUnit, typed) => {
    const values = { ...label, labelUnit, front: typed }
    const [row] = figureRows('placard', values).filter(({ key }) => key === 'front')
    expect(row && rowFault(row, typed)).toBeDefined()
  })
})

describe('the rows of a wheel', () => {
  it('take the maker’s own order, and the star where none is printed', () => {
    const own = { ...studs, order: '1-3-5-2-4' }
    expect(rowsOpen(figureRows('studTorque', own), own)).toEqual([])
    expect(figureIn('studTorque', own)).toMatchObject({ studs: { makersSequence: [1, 3, 5, 2, 4] } })
    expect(rowsOpen(figureRows('studTorque', studs), studs)).toEqual([])
    expect(figureIn('studTorque', studs)).toMatchObject({ studs: { makersSequence: null } })
  })

  it('refuse an order that goes from a fastener to its neighbor, or misses one', () => {
    for (const order of ['1-2-3-4-5', '1-3-5-2']) {
      const row = figureRows('studTorque', { ...studs, order }).find(({ key }) => key === 'order')
      expect(row && rowFault(row, order)).toBeDefined()
    }
  })

  it('need the maker’s order where there is no star for so many fasteners', () => {
    const seven = { ...studs, count: '7' }
    const open = rowsOpen(figureRows('studTorque', seven), seven).map(({ key }) => key)
    const five = rowsOpen(figureRows('studTorque', studs), studs).map(({ key }) => key)
    expect([open.includes('order'), five.includes('order')]).toEqual([!hasStar(7), !hasStar(5)])
  })
})

const read = { source: 'maker-manual', reference: 'page 12' }

describe('the rows of how a vehicle learns', () => {
  const procedure = {
    entry: 'Key on, hold the button.',
    confirmation: 'One beep.',
    exit: 'Key off.',
    trap: null,
  }
  it.each([
    ['stationary', { timeLimitMinutes: '5' }, { timeLimitMinutes: 5, parkMinutes: null, driveMinutes: null }],
    ['connector', { driveMinutes: '10' }, { timeLimitMinutes: null, driveMinutes: 10, driveSpeedMph: null }],
    ['reset', { driveMinutes: null }, { timeLimitMinutes: null, driveMinutes: null, driveSpeedMph: null }],
    [
      'automatic',
      { parkMinutes: '20', driveMinutes: '15', driveSpeedMph: '30' },
      { timeLimitMinutes: null, parkMinutes: 20, driveMinutes: 15, driveSpeedMph: 30 },
    ],
  ] as const)('ask only for the figures of %s, and keep no other', (method, figures, entered) => {
    const values = { method, ...procedure, ...figures, ...read }
    expect(rowsOpen(figureRows('relearn', values), values)).toEqual([])
    const other = {
      timeLimitMinutes: '7',
      parkMinutes: '7',
      driveMinutes: '7',
      driveSpeedMph: '7',
      ...values,
    }
    expect(figureIn('relearn', other)).toMatchObject({ relearn: { method, ...entered } })
    expect(EnteredFigure.safeParse(figureIn('relearn', values)).success).toBe(true)
  })
})

describe('the rows of how a vehicle watches its tires', () => {
  it('ask a vehicle with sensors for its spare and where it warns', () => {
    const values = { system: 'direct', shows: 'yes', finds: 'no', spare: 'yes', ...read }
    const warns = { 'warn.front': '26', 'warn.rear': null, 'warn.spare': '45' }
    expect(rowsOpen(figureRows('system', values), values)).toEqual([])
    const entered = figureIn('system', { ...values, ...warns })
    expect(entered).toMatchObject({ spareMonitored: true, warnAtPsi: { front: 26, rear: null, spare: 45 } })
    expect(EnteredFigure.safeParse(entered).success).toBe(true)
  })

  it('ask one without sensors for nothing that only sensors can do', () => {
    const values = { system: 'none', ...read }
    expect(figureRows('system', values).map(({ key }) => key)).toEqual(['system', 'source', 'reference'])
    const changed = { ...values, shows: 'yes', finds: 'yes', spare: 'yes', 'warn.front': '26' }
    expect(figureIn('system', changed)).toEqual({
      figure: 'system',
      system: 'none',
      pressureDisplay: false,
      locatesWheels: false,
      spareMonitored: false,
      warnAtPsi: null,
      kind: 'maker-manual',
      reference: 'page 12',
    })
  })
})

it('takes the lifting points as they are printed', () => {
  const values = { liftNotes: ' Front: behind the notch. ', ...read }
  expect(rowsOpen(figureRows('lifting', values), values)).toEqual([])
  expect(EnteredFigure.parse(figureIn('lifting', values))).toMatchObject({
    liftNotes: 'Front: behind the notch.',
  })
})

const hasStar = (count: number): boolean =>
  EnteredFigure.safeParse(figureIn('studTorque', { ...studs, count: String(count) })).success
