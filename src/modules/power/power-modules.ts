import type { Module } from '../module.ts'
import { batteryBank } from './battery-bank.ts'
import { cableDrop } from './cable-drop.ts'
import { cableDropAwg } from './cable-drop-awg.ts'
import { dcLoad } from './dc-load.ts'
import { fuelStore } from './fuel-store.ts'
import { pvArray } from './pv-array.ts'
import { windCharge } from './wind-charge.ts'

/** The modules of the power supply, listed by hand, in the order of the job. */
export const powerModules: readonly Module[] = [
  dcLoad,
  batteryBank,
  cableDrop,
  cableDropAwg,
  pvArray,
  windCharge,
  fuelStore,
]
