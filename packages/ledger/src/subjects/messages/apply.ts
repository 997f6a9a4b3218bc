import { type Appliers, recorded } from '../../fold/foldable.ts'
import type { messageKinds } from './kinds.ts'

export const applyMessages: Appliers<keyof typeof messageKinds> = {
  'contact.made': (state, entry) => ({
    ...state,
    contacts: [...state.contacts, recorded(entry.payload, entry)],
  }),
  'note.added': (state, entry) => ({ ...state, notes: [...state.notes, recorded(entry.payload, entry)] }),
}
