/**
 * Source: the definition of positional notation: one number to base 16 and to base 10. Pairs worked out by hand from powers of
 * 16 (16^4 = 65,536; 16^7 = 268,435,456; 2^32 − 1 = 4,294,967,295); IDs invented.
 */
import { readSensorId } from '@bayledger/reckoning/sensor/read-sensor-id'
import { idKey, idText } from '@bayledger/reckoning/sensor/sensor-id'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const pairs = [
  ['00000001', '1', '1'],
  ['0000000F', '15', 'F'],
  ['00000010', '16', '10'],
  ['000000FF', '255', 'FF'],
  ['00010000', '65536', '10000'],
  ['00ABCDEF', '11259375', 'ABCDEF'],
  ['10000000', '268435456', '10000000'],
  ['12345678', '305419896', '12345678'],
  ['7FFFFFFF', '2147483647', '7FFFFFFF'],
  ['80000000', '2147483648', '80000000'],
  ['DEADBEEF', '3735928559', 'DEADBEEF'],
  ['FFFFFFFE', '4294967294', 'FFFFFFFE'],
] as const

published(
  { document: 'Sensor IDs', section: 'base 16 and base 10', certainty: 'computed from definition' },
  () => {
    it.each(pairs)('%s is the number %s', (hex, decimal) => {
      expect(idKey(hex.toLowerCase(), 'hex')).toBe(idKey(decimal, 'decimal'))
    })

    it.each(pairs)('%s is written %s', (hex, decimal, key) => {
      expect(idText(idKey(hex, 'hex'), 'decimal')).toBe(decimal)
      expect(idText(idKey(decimal, 'decimal'), 'hex')).toBe(key)
    })

    it.each(pairs)('%s and, with a zero before it, %s are read as one sensor', (hex, decimal, key) => {
      expect(readSensorId(`0x${hex}`, 'hex')).toEqual({ ok: true, value: { text: hex, key } })
      expect(readSensorId(`0${decimal}`, 'decimal')).toEqual({
        ok: true,
        value: { text: `0${decimal}`, key },
      })
    })
  },
)
