import { codesByGroup } from '@bayledger/reckoning/diagnosis/finding-codes'
import { expect, it } from 'vitest'
import { isAboutTheSensor } from './about-the-sensor.ts'

/** Of the groups about sensors and their IDs, those that are about something else in the wheel or the hand. */
const aboutAnotherThing = ['gauge-suspect', 'stem-corroded', 'temporary-spare-fitted']

it('a sensor that is silent, of another frequency or with a foreign ID is never marked as a bad tire', () => {
  const codes = [...codesByGroup.sensor, ...codesByGroup.identity]
  expect(codes.filter((code) => !isAboutTheSensor(code))).toEqual(aboutAnotherThing)
})

it('a low tire is marked as the cause itself', () => {
  expect(codesByGroup.pressure.filter(isAboutTheSensor)).toEqual([])
  expect(codesByGroup.stop.filter(isAboutTheSensor)).toEqual([])
})
