import { describe, expect, it } from 'vitest'
import { filledIn, messagesAbout, ownMessagesIn, placesIn, templateFault } from './message-template.ts'

describe('a message in a shop’s own words', () => {
  it.each(messagesAbout)('about %s may have each of its places, and must have the last', (about) => {
    const places = placesIn(about)
    expect(templateFault(about, places.join(' '))).toBeNull()
    expect(templateFault(about, places.slice(0, -1).join(' '))).toEqual({
      why: 'missing-place',
      place: places.at(-1),
    })
  })

  it.each([
    ['Dear {nmae}: {link}', '{nmae}'],
    ['Dear {Name}: {link}', '{Name}'],
    ['Dear {}: {link}', '{}'],
    ['Dear {name: {link}', '{name:'],
    ['Dear name}: {link}', 'name}'],
    ['Dear {name}, see {work}: {link}', '{work}'],
    ['Dear { name }: {link}', '{ name }'],
  ])('has no place that nothing fills: %s', (template, found) => {
    expect(templateFault('estimate', template)).toMatchObject({ why: 'unknown-place', found })
  })

  it('is filled in once, and takes no name for a place', () => {
    const values = {
      name: 'D. {link}',
      vehicle: 'Linnet C',
      shop: 'Ours',
      link: 'address',
      when: '',
      work: '',
    }
    expect(filledIn('{name}, {vehicle}, {name}: {link}', values)).toBe(
      'D. {link}, Linnet C, D. {link}: address',
    )
  })
})

describe('the own messages of a shop', () => {
  const none = { en: null, es: null }

  it('are read as they are stored', () => {
    const messages = {
      estimate: { en: 'a {link}', es: 'b {link}' },
      report: none,
      retorque: { en: null, es: 'c {when}' },
      deferred: none,
    }
    expect(ownMessagesIn({ lines: [], messages })).toEqual(messages)
  })

  it('hold the one text of the link of a version from before, for estimates in English', () => {
    expect(ownMessagesIn({ linkMessage: 'See {link}' }).estimate).toEqual({ en: 'See {link}', es: null })
  })

  it.each([
    [null],
    [undefined],
    ['text'],
    [{ linkMessage: ' ' }],
    [{ linkMessage: null }],
    [{ messages: null }],
  ])('are none in %j', (body) => {
    expect(ownMessagesIn(body)).toEqual({ estimate: none, report: none, retorque: none, deferred: none })
  })
})
