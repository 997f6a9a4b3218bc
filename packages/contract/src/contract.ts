import { decideEstimate, getCustomerOrder, getCustomerReport, openLink } from './customer-face.ts'
import { createCustomer, getCustomer, listCustomers, putCustomer } from './customers.ts'
import { createEnrollmentCode, enrollDevice, getDevice } from './devices.ts'
import { compareWithTodaysRules, computeDiagnosis } from './diagnoses.ts'
import type { Endpoint } from './endpoint.ts'
import { appendEntries, listRefusedEntries, settleRefusedEntry } from './entries.ts'
import { health, readiness } from './health.ts'
import { createLink, listLinks, revokeLink } from './links.ts'
import { live } from './live.ts'
import { openApi } from './open-api.ts'
import { getEntriesAfter, getLastOdometer, getOrder, listFloor } from './orders.ts'
import { checkReport, getReport, sealOrderReport } from './reports.ts'
import { search } from './search.ts'
import { getSession, listShops, signInAtBay, signInAtDesk, signOut } from './sessions.ts'
import { getSettings, listInstruments, listStock } from './settings.ts'
import { createSheet, createSheetVersion, getSheet, listSheets } from './sheets.ts'
import { listStaff, proveSecondPerson } from './staff.ts'
import { createVehicle, getVehicle, listVehicles, putVehicle } from './vehicles.ts'

/** Every route there is. The server refuses to start when one of these has no handler, or a handler none of these. */
export const contract = [
  listShops,
  signInAtDesk,
  signInAtBay,
  getSession,
  signOut,
  createEnrollmentCode,
  enrollDevice,
  getDevice,
  listStaff,
  proveSecondPerson,
  listFloor,
  search,
  appendEntries,
  listRefusedEntries,
  settleRefusedEntry,
  getOrder,
  getEntriesAfter,
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
  listInstruments,
  listStock,
  getSettings,
  computeDiagnosis,
  compareWithTodaysRules,
  createLink,
  listLinks,
  revokeLink,
  openLink,
  getCustomerOrder,
  decideEstimate,
  getCustomerReport,
  sealOrderReport,
  getReport,
  checkReport,
  live,
  health,
  readiness,
  openApi,
] as const satisfies readonly Endpoint[]
