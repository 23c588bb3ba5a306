import type { Module } from '../module.ts'
import { airLockDoor } from './air-lock-door.ts'
import { airSupply } from './air-supply.ts'
import { carbonMonoxide } from './carbon-monoxide.ts'
import { closedUpTime } from './closed-up-time.ts'
import { ductLoss } from './duct-loss.ts'
import { foodStore } from './food-store.ts'
import { handPump } from './hand-pump.ts'
import { heatBalance } from './heat-balance.ts'
import { heatingLoad } from './heating-load.ts'
import { pumpedDrain } from './pumped-drain.ts'
import { storesRegister } from './stores-register.ts'
import { ventSeparation } from './vent-separation.ts'
import { wasteStore } from './waste-store.ts'
import { waterStore } from './water-store.ts'

/** The modules of air, water and provisions, listed by hand, in the order of the job. */
export const livingModules: readonly Module[] = [
  airSupply,
  closedUpTime,
  carbonMonoxide,
  ductLoss,
  ventSeparation,
  heatBalance,
  heatingLoad,
  airLockDoor,
  pumpedDrain,
  handPump,
  storesRegister,
  waterStore,
  foodStore,
  wasteStore,
]
