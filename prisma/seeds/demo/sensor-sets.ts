import type { RoadPosition } from '@bayledger/reckoning/wheels'

type SensorSet = Readonly<Record<RoadPosition, string>> & { readonly SP?: string }

/** The sensor IDs of the vehicles in the demo's worked orders, hexadecimal. */
export const sensorSets = {
  linnetA: { LF: '4B07D2A1', RF: '4B07D316', RR: '4B07CF58', LR: '4B07D1EC' },
  tarnA: { LF: '3C41A07E', RF: '3C41A112', RR: '3C41A0B5', LR: '3C419FD8' },
  gloaming: { LF: '7E9040C3', RF: '7E9041FA', RR: '7E903D27', LR: '7E904388' },
  /** The summer wheels that Tarn B still knows, and the winter wheels that it came on. */
  tarnBSummer: { LF: '3C52E610', RF: '3C52E6A9', RR: '3C52E41D', LR: '3C52E77B' },
  tarnBWinter: { LF: '51A6803F', RF: '51A68194', RR: '51A67EC2', LR: '51A6822D' },
  linnetB: { LF: '4B1190C7', RF: '4B119228', RR: '4B118E05', LR: '4B11915E' },
  tarnC: { LF: '3C60D7F2', RF: '3C60D84B', RR: '3C60D5A9', LR: '3C60D913' },
  moorA: { LF: '1F88A302', RF: '1F88A47D', RR: '1F88A0E6', LR: '1F88A3B9' },
  haywainA: { LF: '2A5C7710', RF: '2A5C78E3', RR: '2A5C7549', LR: '2A5C7824', SP: '2A5C79A5' },
  wren: { LF: '9D03B6E1', RF: '9D03B74A', RR: '9D03B40C', LR: '9D03B895' },
  dunnock: { LF: '7E41C20B', RF: '7E41C3D6', RR: '7E41BF72', LR: '7E41C488' },
  haywainB: { LF: '2A6E0419', RF: '2A6E05D2', RR: '2A6E02B7', LR: '2A6E0568', SP: '2A6E06F4' },
  linnetE: { LF: '4B2C6D03', RF: '4B2C6E1F', RR: '4B2C6B90', LR: '4B2C6F45' },
  linnetF: { LF: '4B31F7A8', RF: '4B31F8C1', RR: '4B31F536', LR: '4B31F90D' },
  /** Of Linnet C as they should be; it came with the ID of the right rear at the left rear as well. */
  linnetC: { LF: '4B20A517', RF: '4B20A68C', RR: '4B20A3F1', LR: '4B20A752' },
  linnetD: { LF: '4B27F0B4', RF: '4B27F1D9', RR: '4B27EE63', LR: '4B27F205' },
  linnetG: { LF: '4B38160E', RF: '4B381793', RR: '4B38145A', LR: '4B3818C7' },
  /** Of Moor B until the last day of December. */
  moorB: { LF: '1F93C64A', RF: '1F93C7D5', RR: '1F93C4B8', LR: '1F93C821' },
  tarnD: { LF: '3C7A2B40', RF: '3C7A2CE7', RR: '3C7A2995', LR: '3C7A2D1B' },
  pannierA: { LF: '6D21F094', RF: '6D21F15B', RR: '6D21EE3C', LR: '6D21F2A8' },
  pannierB: { LF: '6D2A4C17', RF: '6D2A4DE0', RR: '6D2A4B72', LR: '6D2A4E96' },
} as const satisfies Record<string, SensorSet>
