/**
 * Source: table of speed symbols of UN R30 and ETRTO, as public code files print it alike; the standards themselves were
 * not read. H comes between U and V. That (Y) is above 300 km/h is from memory, that ZR is above 240 km/h (149 mph)
 * quoted from an owner handbook.
 */
import { isSlower, type SpeedSymbol, speedOfSymbol, speedOfZr } from '@bayledger/reckoning/tire/speed-symbol'
import { distanceIn } from '@bayledger/reckoning/units/length-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const printed =
  'A1 5,A2 10,A3 15,A4 20,A5 25,A6 30,A7 35,A8 40,B 50,C 60,D 65,E 70,F 80,G 90,J 100,K 110,L 120,M 130,N 140,P 150,Q 160,R 170,S 180,T 190,U 200,H 210,V 240,W 270,Y 300'
const rows = printed.split(',').map((row) => {
  const [symbol, speed] = row.split(' ')
  return [symbol as SpeedSymbol, Number(speed)] as const
})

published({ document: 'UN R30 and ETRTO', section: 'speed symbols', certainty: 'read' }, () => {
  it.each(rows)('%s is %i km/h', (symbol, speed) => {
    expect(speedOfSymbol(symbol)).toEqual({ kilometersPerHour: speed, above: false })
  })

  it.each(rows.slice(1).map(([symbol], at) => [rows[at]?.[0] ?? 'A1', symbol] as const))(
    '%s is slower than %s',
    (slower, faster) => {
      expect([isSlower(slower, faster), isSlower(faster, slower)]).toEqual([true, false])
    },
  )

  it('(Y) is above 300 km/h, and faster than Y', () => {
    expect(speedOfSymbol('(Y)')).toEqual({ kilometersPerHour: 300, above: true })
    expect(isSlower('Y', '(Y)')).toBe(true)
  })

  it('ZR is above 240 km/h, which is 149 mph', () => {
    expect(speedOfZr).toEqual({ kilometersPerHour: 240, above: true })
    expect(Math.round(distanceIn('mi', { value: speedOfZr.kilometersPerHour, unit: 'km' }))).toBe(149)
  })
})
