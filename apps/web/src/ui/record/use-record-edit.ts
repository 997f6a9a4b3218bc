import { useMutation } from '@tanstack/react-query'
import { useState } from 'react'
import { isCallProblem } from '../../lib/problem.ts'
import type { Kept } from '../../lib/record-source.ts'
import type { RowValues } from '../rows/rows.ts'
import { draftOf, dropDraft, forgetKey, keepDraft, keyOf, type RecordDraft } from './drafts.ts'
import type { RecordKind } from './record-kind.ts'
import { placedFields, recordFaultsOf } from './record-rows.ts'

/**
 * Editing one record, or a new one (`kept` `null`): what is typed, what is wrong with it, and saving it over the version that
 * was read. What was typed stays until it is saved or given up, whatever the server says.
 */
export const useRecordEdit = <Content, Facts>(
  kind: RecordKind<Content, Facts>,
  kept: Kept<Content, Facts> | null,
  onSaved: (saved: Kept<Content, Facts>) => unknown,
  /** What is stored may be newer than what was read. */
  onRefused: () => unknown,
) => {
  const draftKey = `${kind.name}/${kept?.id ?? 'new'}`
  const [draft, setDraft] = useState<RecordDraft | null>(() => draftOf(draftKey))
  const [tried, setTried] = useState(false)
  const stored: RecordDraft = {
    version: kept?.version ?? 0,
    values: kept === null ? kind.blank : kind.toValues(kept.content),
    sure: [],
  }
  const now = draft ?? stored
  const rows = kind.rows(now.values)
  const faults = recordFaultsOf(rows, now.values)

  const saving = useMutation({
    mutationFn: async ({ version, values, sure }: RecordDraft) => {
      const content = kind.toContent(values)
      if (kept !== null) return kind.source.put(kept.id, version, content, sure)
      const made = await kind.source.create(content, sure, keyOf(content))
      forgetKey(content)
      return made
    },
    onSuccess: (saved) => {
      dropDraft(draftKey)
      setDraft(null)
      setTried(false)
      onSaved(saved)
    },
    onError: onRefused,
  })

  const change = (next: RecordDraft) => {
    keepDraft(draftKey, next)
    setDraft(next)
  }
  const send = (next: RecordDraft) => {
    setTried(true)
    if (Object.keys(recordFaultsOf(kind.rows(next.values), next.values)).length === 0) saving.mutate(next)
  }
  const problem = isCallProblem(saving.error) ? saving.error.body : null
  const placed = placedFields(rows, problem?.fields ?? [])
  const current =
    problem?.code === 'VERSION_STALE' ? (problem.current as Kept<Content> | undefined) : undefined

  return {
    rows,
    values: now.values,
    /** At a row: what is missing or cannot be, once saving was tried, or what the server says of it. */
    faultOf: (key: string): string | undefined => (tried ? faults[key] : undefined) ?? placed.atRows[key],
    isDoubted: (key: string) => problem?.code === 'VALUE_DOUBTFUL' && placed.atRows[key] !== undefined,
    isSure: (key: string) => now.sure.includes(key),
    setSure: (key: string, yes: boolean) =>
      change({ ...now, sure: yes ? [...now.sure, key] : now.sure.filter((one) => one !== key) }),
    set: (key: string, value: string) => change({ ...now, values: { ...now.values, [key]: value } }),
    isChanged: draft !== null,
    save: () => send(now),
    busy: saving.isPending,
    error: saving.error,
    elsewhere: placed.elsewhere,
    /** The version that somebody saved meanwhile, if that is why saving failed. */
    conflict:
      current === undefined ? null : { version: current.version, values: kind.toValues(current.content) },
    /** Saves what is typed over the version that somebody saved meanwhile. */
    saveOnTop: (version: number) => {
      const next = { ...now, version }
      change(next)
      send(next)
    },
    giveUp: () => {
      dropDraft(draftKey)
      setDraft(null)
      setTried(false)
      saving.reset()
    },
    /** Saves other values at once: an earlier version. */
    saveValues: (values: RowValues) => send({ ...stored, values }),
  }
}

export type RecordEdit = ReturnType<typeof useRecordEdit>
