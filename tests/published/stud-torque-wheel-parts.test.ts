/**
 * Source: a wheel parts maker's page on torquing, read online in 2026 (adaptitusa.com/wheellugnuttorquing.aspx):
 * torque by stud size without a pitch, and a second torquing after 50 to 100 miles. It says itself that the vehicle
 * maker's figure governs; its ranges only have to pass our guard. For 1/2 inch it prints 75 to 85, another chart 75
 * to 80; for 14 mm it prints 85 to 90 where vehicle makers print up to 150: hence a guard that is wider than any.
 */
import { retorqueWindow, usualRetorqueMiles } from '@bayledger/reckoning/torque/retorque'
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { ends, isUsual } from './stud-torque.ts'

published(
  { document: "A wheel parts maker's page on wheel torque", edition: '2026', certainty: 'read' },
  () => {
    it.each(
      ends([
        ['M10×1.25', 45, 55],
        ['M12×1.5', 70, 80],
        ['M12×1.25', 70, 80],
        ['M14×1.5', 85, 90],
        ['7/16-20', 70, 80],
        ['1/2-20', 75, 85],
        ['9/16-18', 135, 145],
      ]),
    )('%s at %i lbf·ft is plausible', (thread, poundFeet) => {
      expect(isUsual(thread, poundFeet)).toBe(true)
    })

    it('a wheel is torqued again after 50 miles at the soonest', () => {
      expect(usualRetorqueMiles.from).toBe(50)
    })

    it('a wheel is torqued again after 100 miles at the latest', () => {
      expect(retorqueWindow({ value: 0, unit: 'mi' }, null).to).toEqual({ value: 100, unit: 'mi' })
    })
  },
)
