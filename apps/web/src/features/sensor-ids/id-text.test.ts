import { describe, expect, it } from 'vitest'
import { idFault, idMeant, knownIn, severalIdsFault, withoutRepeats } from './id-text.ts'

const known = [
  { id: '1A2B3C12', says: 'same as stored' },
  { id: '1A2B3C13', says: 'right front, same as stored' },
  { id: '9F003C13', says: 'left rear, same as stored' },
]

describe('a typed sensor ID', () => {
  it('is read as pasted, in any notation of a reader', () => {
    expect(idMeant(' 0x1a:2b 3c-12 ', [])).toBe('1A2B3C12')
    expect(idMeant('1a2b3c99', known)).toBe('1A2B3C99')
  })

  it('picks a known ID by its last four signs if there is just one', () => {
    expect(idMeant('3c12', known)).toBe('1A2B3C12')
    expect(idMeant('3C13', known)).toBeNull()
  })

  it('never makes an ID out of four signs or fewer', () => {
    expect(idMeant('ABCD', known)).toBeNull()
    expect(idMeant('12', known)).toBeNull()
    expect(idFault('ABCD', known)).toMatch(/whole ID/)
  })

  it('says what is wrong, and nothing while nothing is typed', () => {
    expect(idFault('', known)).toBeUndefined()
    expect(idFault('GH12345', known)).toMatch(/0 to 9/)
    expect(idFault('11112222333344445', known)).toMatch(/16/)
  })
})

describe('an ID on a screen that writes decimal', () => {
  const shown = knownIn(known, 'decimal')

  it('is the same number as the one that was heard', () => {
    expect(shown[0]).toEqual({ id: '439041042', says: 'same as stored' })
    expect(idMeant('1042', shown, 'decimal')).toBe('439041042')
    expect(idMeant('0439041042', shown, 'decimal')).toBe('0439041042')
  })

  it('has no letters; where digits alone may be either, both sensors are named', () => {
    expect(idFault('1A2B3C12', shown, 'decimal')).toMatch(/digits only/)
    expect(idFault('439041042', known)).toMatch(/Decimal, it is the sensor 1A2B3C12/)
  })
})

describe('several IDs', () => {
  it('are each whole, or the first that is not is named', () => {
    expect(severalIdsFault('0x9F00AA11, 9f00aa12;1A2B3C12')).toBeUndefined()
    expect(severalIdsFault('9F00AA11 9F00AAXY')).toMatch(/"9F00AAXY"/)
    expect(severalIdsFault('9F00AA11 AA11')).toMatch(/whole ID/)
  })
})

describe('known IDs', () => {
  it('are listed once, whatever their notation', () => {
    expect(
      withoutRepeats([
        { id: '00AB', says: 'one' },
        { id: 'ab', says: 'other' },
      ]),
    ).toEqual([{ id: '00AB', says: 'one' }])
  })
})
