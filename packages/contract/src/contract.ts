import { getAccessRules, putAccessRules } from './access-rules.ts'
import { getChecklist } from './checklist.ts'
import { getComeback } from './comebacks.ts'
import {
  decideEstimate,
  getCustomerOrder,
  getCustomerPhoto,
  getCustomerReport,
  openLink,
  putCustomerLanguage,
} from './customer-face.ts'
import { createCustomer, getCustomer, listCustomers, putCustomer } from './customers.ts'
import { exportDay, getDay } from './day.ts'
import { createEnrollmentCode, enrollDevice, getDevice, registerDeviceKey, tellUnsent } from './devices.ts'
import { compareWithTodaysRules, computeDiagnosis } from './diagnoses.ts'
import type { Endpoint } from './endpoint.ts'
import { appendEntries, getRefusedEntry, listRefusedEntries, settleRefusedEntry } from './entries.ts'
import { erasePerson, listErasures, previewErasure } from './erasures.ts'
import { exports } from './exports.ts'
import { getFirstShop, makeFirstShop } from './first-shop.ts'
import { health, readiness } from './health.ts'
import { liftHold, listHolds, placeHold } from './holds.ts'
import { getImportProgress } from './imports.ts'
import { instruments, instrumentsCsv, listTorquedWheels } from './instruments.ts'
import { createLink, listLinks, revokeLink } from './links.ts'
import { live } from './live.ts'
import { listCustomerMerges, listVehicleMerges, mergeCustomers, mergeVehicles, undoMerge } from './merges.ts'
import {
  askUnsubscribe,
  getNewTime,
  listMessageChoices,
  listMessages,
  putMessageChoice,
  sendMessage,
  sendNewTime,
  unsubscribe,
  withdrawMessage,
} from './messages.ts'
import { getNumbers } from './numbers.ts'
import { openApi } from './open-api.ts'
import { getEntriesAfter, getLastOdometer, getOrder, keepOrders, listFloor } from './orders.ts'
import { copyOwnData, listOwnDataCopies } from './own-data.ts'
import { enterByOwnerCode, getOwnerCode, makeOwnerCode } from './owner-code.ts'
import { handInParcel, handInSealedParcel } from './parcels.ts'
import {
  addPasskey,
  challengeForPasskey,
  challengeForProof,
  challengeForSignIn,
  listPasskeys,
  proveByPasskey,
  removePasskey,
  signInByPasskey,
} from './passkeys.ts'
import { getOwnRecord, people, peopleCsv, setPassword, setPin } from './people.ts'
import { getOrderPhoto, getPhotoStatus, handInSealedPhoto, listOrderPhotos, putPhotoPiece } from './photos.ts'
import { places, placesCsv } from './places.ts'
import { priceBook, pricesCsv } from './prices.ts'
import { checkReport, getReport, listSigningKeys, sealOrderReport } from './reports.ts'
import { getRetention, listRetentionDue, putRetention } from './retention.ts'
import { search } from './search.ts'
import { beginSecondStep, confirmSecondStep, endSecondStep, getSecondStep } from './second-step.ts'
import { listSecurityEvents } from './security-events.ts'
import {
  endOneSession,
  endOtherSessions,
  getSession,
  listSessions,
  listShops,
  proveAgain,
  resumeAtBay,
  signInAtBay,
  signInAtDesk,
  signOut,
} from './sessions.ts'
import { getSettings, listInstruments, listStock } from './settings.ts'
import {
  createBlankSheet,
  createSheet,
  createSheetVersion,
  enterFigure,
  getSheet,
  listSheetOrders,
  listSheets,
  verifyFigure,
} from './sheets.ts'
import { sheetsCsv } from './sheets-csv.ts'
import { listStaff, proveSecondPerson } from './staff.ts'
import {
  changeStock,
  listStockChanges,
  listTransfers,
  recallLot,
  receiveTransfer,
  stockCsv,
  stockItems,
} from './stock.ts'
import { tablets, tabletsCsv } from './tablets.ts'
import { getTexts, putTexts, textsCsv } from './texts.ts'
import { getVehiclePage } from './vehicle-page.ts'
import { createVehicle, getVehicle, listVehicles, putVehicle } from './vehicles.ts'
import { deleteWriteUpDraft, listWriteUpDrafts, putWriteUpDraft } from './write-up-drafts.ts'

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
  proveAgain,
  listSessions,
  endOneSession,
  endOtherSessions,
  getSecondStep,
  beginSecondStep,
  confirmSecondStep,
  endSecondStep,
  getAccessRules,
  putAccessRules,
  getOwnerCode,
  makeOwnerCode,
  enterByOwnerCode,
  challengeForSignIn,
  signInByPasskey,
  challengeForProof,
  proveByPasskey,
  challengeForPasskey,
  addPasskey,
  listPasskeys,
  removePasskey,
  listSecurityEvents,
  createEnrollmentCode,
  enrollDevice,
  getDevice,
  registerDeviceKey,
  tellUnsent,
  listStaff,
  people.list,
  people.create,
  people.read,
  people.put,
  peopleCsv.write,
  peopleCsv.preview,
  peopleCsv.apply,
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
  getRefusedEntry,
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
  mergeCustomers,
  listCustomerMerges,
  mergeVehicles,
  listVehicleMerges,
  undoMerge,
  previewErasure,
  erasePerson,
  listErasures,
  listHolds,
  placeHold,
  liftHold,
  getRetention,
  putRetention,
  listRetentionDue,
  copyOwnData,
  listOwnDataCopies,
  createVehicle,
  getVehicle,
  putVehicle,
  getVehiclePage,
  listWriteUpDrafts,
  putWriteUpDraft,
  deleteWriteUpDraft,
  listSheets,
  createSheet,
  getSheet,
  createSheetVersion,
  createBlankSheet,
  enterFigure,
  verifyFigure,
  listSheetOrders,
  getImportProgress,
  sheetsCsv.write,
  sheetsCsv.preview,
  sheetsCsv.apply,
  listInstruments,
  listStock,
  priceBook.list,
  priceBook.read,
  priceBook.put,
  pricesCsv.write,
  pricesCsv.preview,
  pricesCsv.apply,
  stockItems.list,
  stockItems.create,
  stockItems.read,
  stockItems.put,
  listTransfers,
  listStockChanges,
  changeStock,
  receiveTransfer,
  recallLot,
  stockCsv.write,
  stockCsv.preview,
  stockCsv.apply,
  getSettings,
  places.list,
  places.create,
  places.read,
  places.put,
  placesCsv.write,
  placesCsv.preview,
  placesCsv.apply,
  instruments.list,
  instruments.create,
  instruments.read,
  instruments.put,
  listTorquedWheels,
  instrumentsCsv.write,
  instrumentsCsv.preview,
  instrumentsCsv.apply,
  tablets.list,
  tablets.read,
  tablets.put,
  tabletsCsv.write,
  tabletsCsv.preview,
  tabletsCsv.apply,
  getTexts,
  putTexts,
  textsCsv.write,
  textsCsv.preview,
  textsCsv.apply,
  computeDiagnosis,
  compareWithTodaysRules,
  getComeback,
  createLink,
  listLinks,
  revokeLink,
  openLink,
  listMessages,
  sendMessage,
  getNewTime,
  sendNewTime,
  withdrawMessage,
  listMessageChoices,
  getNumbers,
  putMessageChoice,
  askUnsubscribe,
  unsubscribe,
  getDay,
  exportDay,
  ...Object.values(exports),
  getCustomerOrder,
  decideEstimate,
  getCustomerReport,
  putCustomerLanguage,
  getCustomerPhoto,
  getPhotoStatus,
  putPhotoPiece,
  handInSealedPhoto,
  listOrderPhotos,
  getOrderPhoto,
  sealOrderReport,
  getReport,
  checkReport,
  listSigningKeys,
  live,
  health,
  readiness,
  openApi,
] as const satisfies readonly Endpoint[]
