import { describe, expect, it } from 'vitest'
import { bayOrderPath, linkSecretFrom, pathAfterSignIn, signInPath, writeUpPath } from './paths.ts'

describe('addresses', () => {
  it('escape what they contain', () => {
    expect(bayOrderPath('a/b?c')).toBe('/bay/orders/a%2Fb%3Fc')
    expect(writeUpPath('c1', null)).toBe('/desk/write-up?customer=c1')
    expect(writeUpPath('c1', 'v1')).toBe('/desk/write-up?customer=c1&vehicle=v1')
  })

  it('lead on from the sign-in to where the person wanted to be, and nowhere outside the desk', () => {
    const wanted = '/desk/write-up?customer=c1&vehicle=v1'
    expect(pathAfterSignIn(new URL(signInPath(wanted), 'https://shop.example').search)).toBe(wanted)
    expect(pathAfterSignIn('')).toBe('/desk')
    for (const elsewhere of [
      'https://elsewhere.example',
      '//elsewhere.example',
      '/deskfake',
      'javascript:0',
    ]) {
      expect(pathAfterSignIn(`?${new URLSearchParams({ onward: elsewhere })}`)).toBe('/desk')
    }
  })

  it('keep the secret of a link behind the #', () => {
    expect(linkSecretFrom('#s3cret')).toBe('s3cret')
    expect(linkSecretFrom('#')).toBeNull()
    expect(linkSecretFrom('')).toBeNull()
    expect(linkSecretFrom('#%E0%A4%A')).toBeNull()
  })
})
