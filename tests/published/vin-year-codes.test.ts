/**
 * Source: tables of model year codes at the tenth place (vinutils.com/learn/model-year-codes; autocalculator.org), read;
 * one check a code and round of 30 years, and one for each character that is no year code.
 */
import { modelYear } from '@bayledger/reckoning/vehicle/model-year'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const vinWith = (seventh: string, code: string) => `1ZZ000${seventh}00${code}0000000`

const early =
  'A1980 B1981 C1982 D1983 E1984 F1985 G1986 H1987 J1988 K1989 L1990 M1991 N1992 P1993 R1994 S1995 T1996 V1997 W1998 X1999 Y2000 12001 22002 32003 42004 52005 62006 72007 82008 92009'
const late =
  'A2010 B2011 C2012 D2013 E2014 F2015 G2016 H2017 J2018 K2019 L2020 M2021 N2022 P2023 R2024 S2025 T2026 V2027 W2028 X2029 Y2030 12031 22032 32033 42034 52035 62036 72037 82038 92039'
const rows = (table: string) =>
  table.split(' ').map((row) => [row.slice(0, 1), Number(row.slice(1))] as const)

published(
  { document: 'Published tables of model year codes', section: 'VIN place 10', certainty: 'read' },
  () => {
    it.each(rows(early))('%s is %i where place 7 is a digit', (code, year) => {
      expect(modelYear(vinWith('7', code))).toBe(year)
    })

    it.each(rows(late))('%s is %i where place 7 is a letter', (code, year) => {
      expect(modelYear(vinWith('B', code))).toBe(year)
    })

    it.each([...'IOQUZ0'])('%s is no year code', (code) => {
      expect(modelYear(vinWith('7', code))).toBeNull()
      expect(modelYear(vinWith('B', code))).toBeNull()
    })
  },
)
