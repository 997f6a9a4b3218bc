import type { decideEstimate } from '@bayledger/contract/customer-face'
import type { BodyOf } from '@bayledger/contract/endpoint'
import { useState } from 'react'
import type { Again, Answers } from './estimate-answers.ts'

type Relation = BodyOf<typeof decideEstimate>['relation']

/** What a customer has filled in and not sent. A signature is not kept: it is given under what is sent. */
export type HalfDecision = {
  readonly answers: Answers
  readonly again: Again
  readonly name: string
  readonly relation: Relation | null
  readonly agreements: readonly ('electronic' | 'parts')[]
}

export const nothingFilledIn: HalfDecision = {
  answers: {},
  again: null,
  name: '',
  relation: null,
  agreements: [],
}

/** Who decides. The owner's name is on the card; another person's is typed, and never the owner's by mistake. */
export const withRelation = (half: HalfDecision, relation: Relation, ownersName: string): HalfDecision => {
  const isOwn = half.name.trim() === '' || half.name === ownersName
  if (!isOwn) return { ...half, relation }
  return { ...half, relation, name: relation === 'owner' ? ownersName : '' }
}

type Storage = Pick<typeof sessionStorage, 'getItem' | 'setItem' | 'removeItem'>

/** What was kept under a key; nothing where there is none, or the browser keeps nothing. */
export const keptDecision = (storage: Storage, key: string): HalfDecision => {
  try {
    const kept = storage.getItem(key)
    return kept === null ? nothingFilledIn : { ...nothingFilledIn, ...JSON.parse(kept) }
  } catch {
    return nothingFilledIn
  }
}

/** Keeps it, as long as there is anything to keep. */
export const keepDecision = (storage: Storage, key: string, half: HalfDecision): void => {
  try {
    if (half === nothingFilledIn) storage.removeItem(key)
    else storage.setItem(key, JSON.stringify(half))
  } catch {
    // A browser that keeps nothing: the page works, and only a reload loses what was filled in.
  }
}

/** What is filled in under one version of an estimate: it outlasts a reload of the page, and nothing beyond the visit. */
export const useHalfDecision = (estimateDigest: string) => {
  const key = `decision/${estimateDigest}`
  const [half, setHalf] = useState(() => keptDecision(sessionStorage, key))
  const keep = (next: HalfDecision) => {
    keepDecision(sessionStorage, key, next)
    setHalf(next)
  }
  return { half, keep }
}
