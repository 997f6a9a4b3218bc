import { expect, it } from 'vitest'
import { tamberStreet } from './places.ts'
import { playedHours } from './played-hours.ts'

const weekday = { opens: '07:15', closes: '17:30' }
const saturday = { opens: '08:00', closes: '13:00' }

it('are those on file where the day is played when it is', () => {
  expect(playedHours(tamberStreet, '2026-01-12T16:40:00.000Z')).toEqual(tamberStreet.hours)
})

it('fall on other days with the day that plays Monday, in summer too', () => {
  const onWednesday = playedHours(tamberStreet, '2026-07-15T15:40:00.000Z')
  expect(onWednesday).toEqual([saturday, null, weekday, weekday, weekday, weekday, weekday])
})

it('move with the hour at which 11:40 is played', () => {
  const [monday] = playedHours(tamberStreet, '2026-01-12T18:50:00.000Z')
  expect(monday).toEqual({ opens: '09:25', closes: '19:40' })
})

it('are all day where the played day reaches over midnight', () => {
  for (const now of ['2026-01-12T23:30:00.000Z', '2026-01-12T05:10:00.000Z'])
    expect(new Set(playedHours(tamberStreet, now).map((day) => day && `${day.opens} ${day.closes}`))).toEqual(
      new Set(['00:00 23:59']),
    )
})
