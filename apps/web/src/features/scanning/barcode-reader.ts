import { prepareZXingModule, type ReaderOptions, readBarcodes } from 'zxing-wasm/reader'
import wasm from 'zxing-wasm/reader/zxing_reader.wasm?url'

/** Loads the reader from our own address: left alone, the library would fetch it from elsewhere. */
export const loadBarcodeReader = async (): Promise<void> => {
  await prepareZXingModule({ overrides: { locateFile: () => wasm }, fireImmediately: true })
}

/** What VINs, parts and sensors are marked with; retail codes, to say that one is no part number. */
const options: ReaderOptions = {
  formats: ['Code39', 'Code128', 'DataMatrix', 'QRCode', 'EAN13', 'EAN8', 'UPCA', 'ITF'],
  maxNumberOfSymbols: 8,
}

/** The texts of all barcodes that a picture shows; the reader is loaded. */
export const barcodesIn = async (picture: ImageData): Promise<string[]> => {
  const found = await readBarcodes(picture, options)
  return found.filter(({ isValid }) => isValid).map(({ text }) => text)
}
