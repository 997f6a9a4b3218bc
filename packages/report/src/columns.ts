import type { Column } from './content.ts'

/** The columns of a table by name. `shares`: each one's part of the width, in the order of a row's cells. */
export const columnsOf = <Name extends string>(
  titles: Readonly<Record<Name, string>>,
  shares: Readonly<Record<Name, number>>,
): Column[] => (Object.keys(shares) as Name[]).map((name) => ({ title: titles[name], share: shares[name] }))
