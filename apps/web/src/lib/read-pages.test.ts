import { expect, it } from 'vitest'
import { readPages } from './read-pages.ts'

const list = ['a', 'b', 'c', 'd', 'e']
const pageFrom = (at: number, size: number) => ({
  rows: list.slice(at, at + size),
  next: at + size < list.length ? String(at + size) : null,
})

it.each([1, 2, 3, 5, 9])('follows next to the last page, %i rows at a time', async (size) => {
  const pages = await readPages(async (cursor) => pageFrom(Number(cursor ?? 0), size))
  expect(pages.flatMap(({ rows }) => rows)).toEqual(list)
})
