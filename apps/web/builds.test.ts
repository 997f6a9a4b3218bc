import { describe, expect, it } from 'vitest'
import { customerBuild, staffBuild } from './builds.ts'

describe('what is built for browsers', () => {
  it.each([
    ['staff', staffBuild],
    ['customer', customerBuild],
  ])(
    'for %s holds no source map, no setting and no variable of the machine that built it',
    (_who, config) => {
      expect(config.build?.sourcemap ?? false).toBe(false)
      expect(config.define).toBeUndefined()
      // Vite puts variables of this prefix into what it builds; nothing of ours has it, and no file of them is read.
      expect(config.envPrefix).toBeUndefined()
      expect(config.configFile).toBe(false)
    },
  )
})
