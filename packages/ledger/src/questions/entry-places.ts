import type { Mark, OrderState } from '../state.ts'

/** Where each entry's mark lies among the marks that were looked through. */
type Places = { readonly byId: Map<string, number>; readonly seen: Mark[] }

/** By an order's first mark, which all states that continue one another share. */
const known = new WeakMap<Mark, Places>()

/**
 * The mark of an order's entry. A state that continues another one shares its marks, so only the new ones are looked
 * through: finding one costs the same at any length of an order.
 */
export const markOfEntry = ({ marks }: Pick<OrderState, 'marks'>, entryId: string): Mark | undefined => {
  const [first] = marks
  if (!first) return undefined
  const place = placesOf(first, marks).byId.get(entryId)
  const mark = place === undefined ? undefined : marks[place]
  return mark?.entryId === entryId ? mark : undefined
}

const placesOf = (first: Mark, marks: readonly Mark[]): Places => {
  const before = known.get(first)
  const shared = Math.min(marks.length, before?.seen.length ?? 0)
  // Each mark is made once, for one state: where the last of two lists is the same one, all before it are.
  const continues = before !== undefined && before.seen[shared - 1] === marks[shared - 1]
  const places: Places = continues ? before : { byId: new Map<string, number>(), seen: [] }
  for (const mark of marks.slice(places.seen.length)) {
    places.byId.set(mark.entryId, places.seen.length)
    places.seen.push(mark)
  }
  known.set(first, places)
  return places
}
