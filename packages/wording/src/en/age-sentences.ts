import type { FindingSentences } from '../findings.ts'

/** What a customer reads of parts that grow old, and of what a warranty may still cover. */
export const ageSentences: Pick<
  FindingSentences,
  'under-warranty' | 'tire-old' | 'sensors-near-usual-life' | 'tread-low-soon'
> = {
  'under-warranty': {
    one: 'A part that we fitted on the {wheel} wheel is under our warranty; covered parts cost you nothing.',
    many: 'Parts that we fitted are under our warranty: {wheels}. Covered parts cost you nothing.',
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
    one: 'The {wheel} tire has {tread}/32 inch of tread left. It will need replacing soon.',
    many: 'These tires will need replacing soon: {wheels}. The most worn has {tread}/32 inch of tread left.',
    all: 'All four tires will need replacing soon. The most worn has {tread}/32 inch of tread left.',
  },
}
