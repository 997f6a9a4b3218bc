import type { FindingSentences } from '../findings.ts'

/** What a customer reads of parts that grow old, and of what a warranty may still cover. */
export const ageSentences: Pick<
  FindingSentences,
  'under-warranty' | 'tire-old' | 'sensors-near-usual-life' | 'tread-low-soon'
> = {
  'under-warranty': {
    one: 'A part that we fitted on the {wheel} wheel is in warranty; covered parts cost you nothing.',
    many: 'Parts that we fitted are in warranty: {wheels}. Covered parts cost you nothing.',
  },
  'tire-old': {
    one: 'The {wheel} tire is {years} years old. Several vehicle makers advise replacing tires from six years on.',
    many: 'These tires are up to {years} years old: {wheels}. Several vehicle makers advise replacing them from six on.',
    all: 'All four tires are up to {years} years old. Several vehicle makers advise replacing tires from six years on.',
    forms: {
      'very-old': {
        one: 'The {wheel} tire is {years} years old. Many tire makers advise replacing tires at ten at the latest.',
        many: 'These tires are up to {years} years old: {wheels}. Many tire makers advise ten years at the most.',
        all: 'All four tires are up to {years} years old. Many tire makers advise replacing tires at ten at the latest.',
      },
    },
  },
  'sensors-near-usual-life': {
    one: 'All sensors work. At {years} years their batteries are near their usual life; think of them at the next tires.',
  },
  'tread-low-soon': {
    one: 'The {wheel} tire has {tread}/32 of tread left. It will be due soon.',
    many: 'These tires will be due soon: {wheels}. The least has {tread}/32 of tread left.',
    all: 'All four tires will be due soon. The least has {tread}/32 of tread left.',
  },
}
