import {
  deleteWriteUpDraft,
  listWriteUpDrafts,
  putWriteUpDraft,
  type WriteUpDraft,
} from '@bayledger/contract/write-up-drafts'
import { queryOptions, useQueryClient } from '@tanstack/react-query'
import { useEffect, useEffectEvent, useRef } from 'react'
import { call } from '../../../lib/api-client.ts'
import { blankWriteUp, isWorthKeeping, type WriteUp } from './write-up-form.ts'

/** So long after the last key what is typed is kept: it is what a crash may cost. */
const restMilliseconds = 500

/** Changes whenever the form does: a draft of another form cannot be gone on with, and is only shown. */
const formVersion = 2

export const draftsQuery = queryOptions({
  queryKey: ['write-up-drafts'],
  queryFn: ({ signal }) => call(listWriteUpDrafts, { signal }),
  staleTime: 0,
})

/** What was typed, of a draft of this form; `null` where another program wrote it. */
export const formOf = ({ body }: Pick<WriteUpDraft, 'body'>): WriteUp | null =>
  body.version === formVersion ? { ...blankWriteUp, ...(body.form as WriteUp) } : null

/** Whose write-up it is, as far as it was typed. */
export const draftTitle = (form: WriteUp): string =>
  [
    form.person.known?.name ?? form.person.name.trim(),
    form.which.known?.plate ?? form.which.plate.trim(),
    form.which.known?.description ?? form.which.description.trim(),
  ]
    .filter(Boolean)
    .join(' · ') || 'Nobody named yet'

/** Keeps a write-up on the server while it is typed, also when the page is left. */
export const useKeptDraft = (draftId: string, form: WriteUp, isOver: boolean) => {
  const client = useQueryClient()
  const kept = useRef(form)
  const keep = useEffectEvent(() => {
    if (isOver || kept.current === form || !isWorthKeeping(form)) return
    kept.current = form
    // Where it cannot be sent, the next key tries again; the form on this screen is whole meanwhile.
    call(putWriteUpDraft, { params: { draftId }, body: { body: { version: formVersion, form } } })
      .then(() => client.invalidateQueries({ queryKey: draftsQuery.queryKey }))
      .catch(() => {
        kept.current = blankWriteUp
      })
  })
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change begins the rest anew
  useEffect(() => {
    const timer = setTimeout(keep, restMilliseconds)
    return () => clearTimeout(timer)
  }, [form])
  useEffect(() => {
    const onLeave = () => keep()
    window.addEventListener('pagehide', onLeave)
    return () => {
      window.removeEventListener('pagehide', onLeave)
      keep()
    }
  }, [])
}

export const throwAway = (draftId: string) => call(deleteWriteUpDraft, { params: { draftId } })
