import { getChecklist } from './checklist.ts'
import {
  decideEstimate,
  getCustomerOrder,
  getCustomerPhoto,
  getCustomerReport,
  openLink,
} from './customer-face.ts'
import { createCustomer, getCustomer, listCustomers, putCustomer } from './customers.ts'
import { createEnrollmentCode, enrollDevice, getDevice, registerDeviceKey } from './devices.ts'
import { compareWithTodaysRules, computeDiagnosis } from './diagnoses.ts'
import type { Endpoint } from './endpoint.ts'
import { appendEntries, listRefusedEntries, settleRefusedEntry } from './entries.ts'
import { getFirstShop, makeFirstShop } from './first-shop.ts'
import { health, readiness } from './health.ts'
import {
  exportInstruments,
  importInstruments,
  instruments,
  listTorquedWheels,
  previewInstrumentsImport,
} from './instruments.ts'
import { createLink, listLinks, revokeLink } from './links.ts'
import { live } from './live.ts'
import { openApi } from './open-api.ts'
import { getEntriesAfter, getLastOdometer, getOrder, keepOrders, listFloor } from './orders.ts'
import { handInParcel, handInSealedParcel } from './parcels.ts'
import { getOwnRecord, people, setPassword, setPin } from './people.ts'
import { getOrderPhoto, getPhotoStatus, handInSealedPhoto, listOrderPhotos, putPhotoPiece } from './photos.ts'
import { places } from './places.ts'
import { exportPrices, importPrices, previewPriceImport, priceBook } from './prices.ts'
import { checkReport, getReport, sealOrderReport } from './reports.ts'
import { search } from './search.ts'
import { getSession, listShops, resumeAtBay, signInAtBay, signInAtDesk, signOut } from './sessions.ts'
import { getSettings, listInstruments, listStock } from './settings.ts'
import {
  createBlankSheet,
  createSheet,
  createSheetVersion,
  enterFigure,
  exportSheets,
  getSheet,
  importSheets,
  listSheetOrders,
  listSheets,
  previewSheetImport,
  verifyFigure,
} from './sheets.ts'
import { listStaff, proveSecondPerson } from './staff.ts'
import {
  changeStock,
  exportStock,
  importStock,
  listStockChanges,
  listTransfers,
  previewStockImport,
  recallLot,
  receiveTransfer,
  stockItems,
} from './stock.ts'
import { tablets } from './tablets.ts'
import { getTexts, putTexts } from './texts.ts'
import { createVehicle, getVehicle, listVehicles, putVehicle } from './vehicles.ts'

/** Every route there is. The server refuses to start when one of these has no handler, or a handler none of these. */
export const contract = [
  getFirstShop,
  makeFirstShop,
  listShops,
  signInAtDesk,
  signInAtBay,
  resumeAtBay,
  getSession,
  signOut,
  createEnrollmentCode,
  enrollDevice,
  getDevice,
  registerDeviceKey,
  listStaff,
  people.list,
  people.create,
  people.read,
  people.put,
  getChecklist,
  getOwnRecord,
  setPin,
  setPassword,
  proveSecondPerson,
  listFloor,
  search,
  appendEntries,
  handInParcel,
  handInSealedParcel,
  listRefusedEntries,
  settleRefusedEntry,
  getOrder,
  getEntriesAfter,
  keepOrders,
  getLastOdometer,
  listCustomers,
  createCustomer,
  getCustomer,
  putCustomer,
  listVehicles,
  createVehicle,
  getVehicle,
  putVehicle,
  listSheets,
  createSheet,
  getSheet,
  createSheetVersion,
  createBlankSheet,
  enterFigure,
  verifyFigure,
  listSheetOrders,
  exportSheets,
  previewSheetImport,
  importSheets,
  listInstruments,
  listStock,
  priceBook.list,
  priceBook.read,
  priceBook.put,
  exportPrices,
  previewPriceImport,
  importPrices,
  stockItems.list,
  stockItems.create,
  stockItems.read,
  stockItems.put,
  listTransfers,
  listStockChanges,
  changeStock,
  receiveTransfer,
  recallLot,
  exportStock,
  previewStockImport,
  importStock,
  getSettings,
  places.list,
  places.create,
  places.read,
  places.put,
  instruments.list,
  instruments.create,
  instruments.read,
  instruments.put,
  listTorquedWheels,
  exportInstruments,
  previewInstrumentsImport,
  importInstruments,
  tablets.list,
  tablets.read,
  tablets.put,
  getTexts,
  putTexts,
  computeDiagnosis,
  compareWithTodaysRules,
  createLink,
  listLinks,
  revokeLink,
  openLink,
  getCustomerOrder,
  decideEstimate,
  getCustomerReport,
  getCustomerPhoto,
  getPhotoStatus,
  putPhotoPiece,
  handInSealedPhoto,
  listOrderPhotos,
  getOrderPhoto,
  sealOrderReport,
  getReport,
  checkReport,
  live,
  health,
  readiness,
  openApi,
] as const satisfies readonly Endpoint[]
