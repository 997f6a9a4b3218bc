import type { NotWanted, ScanWanted } from '@bayledger/reckoning/scan/fit-scan'
import type { CameraProblem } from './camera.ts'

/** What a person reads while something is scanned. */

export const wantedHere: Readonly<Record<ScanWanted, string>> = {
  vin: 'Scan the VIN, at the windshield or on the door.',
  'sensor-id': 'Scan the label of the sensor.',
  part: 'Scan the part number, on the part or its bag.',
  wheels: 'Scan or paste the list of all wheels.',
}

/** "This is a VIN. Scan the label of the sensor." */
export const scanRefusal = (is: NotWanted, wanted: ScanWanted, text: string): string => {
  const todo = wantedHere[wanted]
  switch (is.isA) {
    case 'vin':
      return `This is a VIN. ${todo}`
    case 'misread-vin':
      return `This is as long as a VIN and cannot be one: ${is.reading.allowed}. ${wanted === 'vin' ? is.reading.do : todo}`
    case 'sensor-id':
      return `This is the ID of a sensor. ${todo}`
    case 'part':
      return `This is a part number of your stock. ${todo}`
    case 'wheels':
      return `This lists several wheels. ${todo}`
    case 'product-code':
      return `This is the product code of a package. ${todo}`
    case 'unknown':
      return text === ''
        ? `The scanner sent nothing that can be read. ${todo}`
        : `"${shortened(text)}" is ${nothingOf[wanted]}. ${todo}`
  }
}

const nothingOf: Readonly<Record<ScanWanted, string>> = {
  vin: 'no VIN',
  'sensor-id': 'no sensor ID',
  part: 'no part number',
  wheels: 'no list of wheels',
}

/** What a scan is told where nothing on the screen takes one. */
export const noPlaceWords = (text: string): string =>
  `Nothing on this screen takes "${shortened(text)}". Open the field that it is for, then scan it again.`

export const scanLocked = 'This tablet is locked. Sign in, then scan it again.'

export const alreadyScanned = (label: string): string =>
  `${label} is filled in already. Tap it, then scan it again.`

/** What a button says that starts the camera for a field. */
export const scanButtonWords: Readonly<Record<ScanWanted, string>> = {
  vin: 'Scan the VIN',
  'sensor-id': 'Scan the sensor',
  part: 'Scan the part',
  wheels: 'Scan all wheels',
}

/** The same on a key. */
export const scanShort = 'Scan'

export const typeInstead = 'Type it instead'

export const cameraWords: Readonly<Record<CameraProblem | 'opening', string>> = {
  opening: 'The camera is opening …',
  insecure: 'Browsers give the camera to secure addresses only: ask the owner to run the shop on https.',
  none: 'This device has no camera that fits. Use a scanner, or type it.',
  refused:
    'This browser may not use the camera. Allow it in the browser, beside the address, then scan again.',
  'in-use': 'Another program has the camera. Close that program, then scan again.',
  'no-reader':
    'The barcode reader could not be loaded: the server is out of reach. Use a scanner, or type it.',
  unknown: 'The camera does not start. Use a scanner, or type it.',
}

export const partMissing =
  'This part of the program could not be loaded: the server is out of reach. Go on without it, or try again.'

const shortened = (text: string): string => (text.length > 40 ? `${text.slice(0, 39)}…` : text)
