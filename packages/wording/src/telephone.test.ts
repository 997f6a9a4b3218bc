import { expect, it } from 'vitest'
import { telephoneWords } from './telephone.ts'

it.each([
  ['+15555550142', '(555) 555-0142'],
  ['+12035550190', '(203) 555-0190'],
  ['+441632960001', '+441632960001'],
  ['+1555555014', '+1555555014'],
  ['+155555501425', '+155555501425'],
  ['15555550142', '15555550142'],
  ['call +15555550142', 'call +15555550142'],
  ['+1555555014x', '+1555555014x'],
])('%s reads %s', (number, words) => {
  expect(telephoneWords(number)).toBe(words)
})
