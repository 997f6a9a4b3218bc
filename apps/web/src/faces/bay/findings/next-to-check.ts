import type { NextCheck } from '@bayledger/reckoning/diagnosis/diagnosis'
import { type Thing, thingOfField } from '../../../features/arrival/things.ts'

type NextToCheck = {
  /** What is worth most and can be recorded here. */
  readonly here: { readonly thing: Thing; readonly ask: string } | null
  /** What is worth more than that and stands in papers: the desk looks it up. */
  readonly atDesk: NextCheck | null
}

/** The facts worth getting are ranked by the rules; the first that has a pad here is the bay's. */
export const nextToCheck = (nextChecks: readonly NextCheck[]): NextToCheck => {
  const ranked = nextChecks.map((check) => ({ check, thing: thingOfField(check.field) }))
  const [first] = ranked
  const here = ranked.find(({ thing }) => thing !== null)
  return {
    here: here?.thing ? { thing: here.thing, ask: here.check.ask } : null,
    atDesk: first && first.thing === null ? first.check : null,
  }
}
