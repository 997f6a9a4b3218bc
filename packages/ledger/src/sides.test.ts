import { describe, expect, it } from 'vitest'
import { definitionOf, kindNames } from './registry.ts'
import { sideKindsOf } from './sides.ts'

describe('the sides of a kind', () => {
  it.each(kindNames)('%s names in the registry exactly the kinds of side that its schemas mark', (kind) => {
    expect(sideKindsOf(kind)).toEqual(definitionOf(kind).sides)
  })
})
